/**
 * Every stretch of a row of symbols, so that a walk from the start spells one stretch and knows where it stood first. Grown symbol by symbol; time and
 * memory grow with the row. Source: Blumer et al., The smallest automaton recognizing the subwords of a text (1985).
 */
export class Automaton {
  readonly #next: Map<number, number>[] = [new Map()];
  readonly #link: number[] = [-1];
  readonly #length: number[] = [0];
  readonly #firstEnd: number[] = [-1];
  #last = 0;
  #size = 0;

  #state(next: Map<number, number>, link: number, length: number, firstEnd: number): number {
    this.#next.push(next);
    this.#link.push(link);
    this.#length.push(length);
    return this.#firstEnd.push(firstEnd) - 1;
  }

  /** Adds one symbol at the end of the row. */
  add(symbol: number): void {
    const state = this.#state(new Map(), 0, this.#length[this.#last]! + 1, this.#size++);
    let from = this.#last;
    this.#last = state;
    while (from >= 0 && !this.#next[from]!.has(symbol)) {
      this.#next[from]!.set(symbol, state);
      from = this.#link[from]!;
    }
    if (from < 0) return;
    const reached = this.#next[from]!.get(symbol)!;
    if (this.#length[reached] === this.#length[from]! + 1) {
      this.#link[state] = reached;
      return;
    }
    const twin = this.#state(new Map(this.#next[reached]), this.#link[reached]!, this.#length[from]! + 1, this.#firstEnd[reached]!);
    while (from >= 0 && this.#next[from]!.get(symbol) === reached) {
      this.#next[from]!.set(symbol, twin);
      from = this.#link[from]!;
    }
    this.#link[reached] = twin;
    this.#link[state] = twin;
  }

  /** The longest beginning of `row` from `at` that stands in the automaton's row, and where it stood first. Example: of "abcab", "abd" is 2 long, first at 0. */
  longest(row: readonly number[], at: number): { first: number; length: number } {
    let state = 0;
    let length = 0;
    for (; at + length < row.length; length += 1) {
      const next = this.#next[state]!.get(row[at + length]!);
      if (next === undefined) break;
      state = next;
    }
    return { first: this.#firstEnd[state]! - length + 1, length };
  }
}
