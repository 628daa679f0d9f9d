const CHANGED = 2;
const OPEN = 3;
const FAR = 1 << 28;

/** Least costs of all ways to lay the beginnings of two rows over each other, near the diagonal; rows of the table are kept here and there and made again. */
export class Table {
  /** Of the best way. */
  readonly cost: number;
  readonly #a: ArrayLike<number>;
  readonly #b: ArrayLike<number>;
  /** Columns from the first one of a row to the last: column d of row i stands for b[i + #low + d]. */
  readonly #width: number;
  readonly #low: number;
  readonly #every: number;
  /** Each #every-th row: paired, a alone, b alone, one after the other. */
  readonly #kept: Int32Array[] = [];

  constructor(a: ArrayLike<number>, b: ArrayLike<number>, beyond: number) {
    [this.#a, this.#b] = [a, b];
    const apart = b.length - a.length;
    this.#low = Math.min(0, apart) - beyond;
    this.#width = Math.max(0, apart) + beyond - this.#low + 1;
    this.#every = Math.max(8, Math.ceil(Math.sqrt(a.length)));
    let row = this.#first();
    for (let i = 0; i <= a.length; i += 1) {
      if (i > 0) row = this.#after(row, i);
      if (i % this.#every === 0) this.#kept.push(row);
    }
    const end = apart - this.#low;
    this.cost = Math.min(row[end]!, row[this.#width + end]!, row[2 * this.#width + end]!);
  }

  #first(): Int32Array {
    const w = this.#width;
    const row = new Int32Array(3 * w).fill(FAR);
    row[-this.#low] = 0;
    for (let d = 1 - this.#low; d < w && d + this.#low <= this.#b.length; d += 1) row[2 * w + d] = OPEN + d + this.#low;
    return row;
  }

  #after(row: Int32Array, i: number): Int32Array {
    const [w, a, b] = [this.#width, this.#a, this.#b];
    const next = new Int32Array(3 * w).fill(FAR);
    const symbol = a[i - 1];
    for (let d = Math.max(0, -i - this.#low), j = i + this.#low + d; d < w && j <= b.length; d += 1, j += 1) {
      if (j > 0) next[d] = Math.min(row[d]!, row[w + d]!, row[2 * w + d]!) + (symbol === b[j - 1] ? 0 : CHANGED);
      if (d + 1 < w) next[w + d] = Math.min(row[d + 1]! + OPEN, row[w + d + 1]!, row[2 * w + d + 1]! + OPEN) + 1;
      if (d > 0 && j > 0) next[2 * w + d] = Math.min(next[d - 1]! + OPEN, next[w + d - 1]! + OPEN, next[2 * w + d - 1]!) + 1;
    }
    return next;
  }

  /** Least costs from each place of row `i` to the end, by what was done last, from those of row `i + 1`. */
  #before(row: Int32Array | null, i: number): Int32Array {
    const [w, a, b] = [this.#width, this.#a, this.#b];
    const costs = new Int32Array(3 * w).fill(FAR);
    const symbol = a[i];
    const first = Math.max(0, -i - this.#low);
    for (let d = Math.min(w - 1, b.length - i - this.#low), j = i + this.#low + d; d >= first; d -= 1, j -= 1) {
      if (i === a.length && j === b.length) {
        for (const state of [0, 1, 2]) costs[state * w + d] = 0;
        continue;
      }
      const paired = row && j < b.length ? row[d]! + (symbol === b[j] ? 0 : CHANGED) : FAR;
      const alone = row && d > 0 ? row[w + d - 1]! + 1 : FAR;
      const other = j < b.length && d + 1 < w ? costs[2 * w + d + 1]! + 1 : FAR;
      costs[d] = Math.min(paired, alone + OPEN, other + OPEN);
      costs[w + d] = Math.min(paired, alone, other + OPEN);
      costs[2 * w + d] = Math.min(paired, alone + OPEN, other);
    }
    return costs;
  }

  /** Whether the pair at row `i` is in the best way, and in each that costs up to `slack` more. */
  #isSettled(to: Int32Array, from: Int32Array, slack: number): boolean {
    const w = this.#width;
    let [best, second] = [FAR, FAR];
    for (let d = 0; d < w; d += 1) {
      const here = to[d]! + from[d]!;
      second = Math.min(second, Math.max(best, here), to[w + d]! + from[w + d]!);
      best = Math.min(best, here);
    }
    return best === this.cost && second > this.cost + slack;
  }

  /** What was done before the last step into `cost`, of the states a row has at one column. */
  #last(row: Int32Array, d: number, cost: number, state: number): number {
    const w = this.#width;
    const step = (before: number) => (state === 0 ? 0 : 1 + (before === state ? 0 : OPEN));
    return [0, 1, 2].find((before) => row[before * w + d]! + step(before) === cost)!;
  }

  /** The best way, pairs before gaps, and which of its pairs no way up to `slack` dearer does without. */
  trace(slack: number): { partner: Int32Array; certain: Uint8Array } {
    const [a, b, w] = [this.#a, this.#b, this.#width];
    const partner = new Int32Array(a.length).fill(-1);
    const certain = new Uint8Array(a.length);
    let from = this.#before(null, a.length);
    let j = b.length;
    let state = -1;
    for (let block = this.#kept.length - 1; block >= 0; block -= 1) {
      const start = block * this.#every;
      const rows = [this.#kept[block]!];
      for (let i = start + 1; i <= Math.min(a.length, start + this.#every); i += 1) rows.push(this.#after(rows.at(-1)!, i));
      for (let i = start + rows.length - 1; i > start; i -= 1) {
        const [row, before] = [rows[i - start]!, rows[i - start - 1]!];
        if (this.#isSettled(row, from, slack)) certain[i - 1] = 1;
        const column = () => j - i - this.#low;
        if (state < 0) state = this.#last(row, column(), this.cost, 0);
        for (; state === 2; j -= 1) state = this.#last(row, column() - 1, row[2 * w + column()]!, 2);
        const cost = row[state * w + column()]!;
        if (state === 0) {
          partner[i - 1] = j - 1;
          state = this.#last(before, column(), cost - (a[i - 1] === b[j - 1] ? 0 : CHANGED), 0);
          j -= 1;
        } else state = this.#last(before, column() + 1, cost, 1);
        from = this.#before(from, i - 1);
      }
    }
    return { partner, certain };
  }
}
