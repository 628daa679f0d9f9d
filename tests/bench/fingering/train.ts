import { SLOTS } from '../../../core/fingering/fit/slots.ts';
import { marginalsOf, stepFactors } from '../../../core/search/marginals.ts';
import { PER_PLACE, PER_STEP, type Lesson } from './lesson.ts';
import { chance } from '../../support/chance.ts';

const NOTES_A_CHUNK = 128;
const RATE = 0.15;
/** How strongly weights are drawn to nothing: more where there is less to learn from. Chosen by leaving works out. */
export const SHRINK = { violin: 1.5, cello: 6 };

/** Maximum likelihood by AdaGrad over chunks of a line. */
class Trainer {
  readonly weights = new Float32Array(SLOTS);
  private readonly squares = new Float32Array(SLOTS);
  private readonly gradient = new Float32Array(SLOTS);
  private readonly marked = new Uint8Array(SLOTS);
  private readonly touched = new Int32Array(SLOTS);
  private count = 0;
  private readonly shrink: number;

  constructor(shrink: number) {
    this.shrink = shrink;
  }

  private sums(rows: Int32Array, width: number): Float64Array {
    const result = new Float64Array(rows.length / width);
    for (let row = 0, at = 0; row < result.length; row += 1, at += width) {
      let total = 0;
      for (let i = at; i < at + width && rows[i]! >= 0; i += 1) total += this.weights[rows[i]!]!;
      result[row] = total;
    }
    return result;
  }

  private spread(rows: Int32Array, width: number, row: number, amount: number): void {
    if (Math.abs(amount) < 1e-4) return;
    for (let i = row * width; i < (row + 1) * width && rows[i]! >= 0; i += 1) {
      const slot = rows[i]!;
      if (this.marked[slot] === 0) {
        this.marked[slot] = 1;
        this.touched[this.count++] = slot;
      }
      this.gradient[slot]! += amount;
    }
  }

  /** One step of ascent on notes [from, to) of a lesson. */
  chunk(lesson: Lesson, from: number, to: number): void {
    const features = lesson.features.slice(from, to);
    const chain = { states: features.map((f) => this.sums(f.places, PER_PLACE)), steps: features.map((f, k) => (k === 0 ? new Float64Array(0) : this.sums(f.steps, PER_STEP))) };
    const { states, steps } = marginalsOf(chain, stepFactors(chain));
    const share = 1 / lesson.taken.length;
    features.forEach((f, k) => {
      const size = lesson.sizes[from + k]!;
      const wanted = states[k]!.map((p) => -p);
      const wantedSteps = steps[k]!.map((p) => -p);
      for (const player of lesson.taken) {
        wanted[player[from + k]!]! += share;
        if (k > 0) wantedSteps[player[from + k - 1]! * size + player[from + k]!]! += share;
      }
      wanted.forEach((amount, b) => this.spread(f.places, PER_PLACE, b, lesson.weight * amount));
      if (k > 0) wantedSteps.forEach((amount, ab) => this.spread(f.steps, PER_STEP, ab, lesson.weight * amount));
    });
    this.apply();
  }

  private apply(): void {
    for (let i = 0; i < this.count; i += 1) {
      const slot = this.touched[i]!;
      const g = this.gradient[slot]! - this.shrink * this.weights[slot]!;
      this.squares[slot]! += g * g;
      this.weights[slot]! += (RATE * g) / Math.sqrt(this.squares[slot]! + 1e-8);
      this.gradient[slot] = 0;
      this.marked[slot] = 0;
    }
    this.count = 0;
  }
}

function chunksOf(lessons: Lesson[], random: () => number): [Lesson, number, number][] {
  const chunks: [Lesson, number, number][] = [];
  for (const lesson of lessons) {
    const n = lesson.sizes.length;
    for (let at = -Math.floor(random() * NOTES_A_CHUNK); at < n; at += NOTES_A_CHUNK) {
      const [from, to] = [Math.max(0, at), Math.min(n, at + NOTES_A_CHUNK)];
      if (to - from > 1) chunks.push([lesson, from, to]);
    }
  }
  for (let i = chunks.length - 1; i > 0; i -= 1) {
    const j = Math.floor(random() * (i + 1));
    [chunks[i], chunks[j]] = [chunks[j]!, chunks[i]!];
  }
  return chunks;
}

/** Weights fitted to the lessons, in hundredths as the product keeps them: average of the second half of the epochs. Same seed, same weights. */
export function train(lessons: Lesson[], seed: number, shrink: number, epochs = 24): Int8Array {
  const random = chance(seed).next;
  const trainer = new Trainer(shrink);
  const sum = new Float64Array(SLOTS);
  for (let epoch = 0; epoch < epochs; epoch += 1) {
    for (const [lesson, from, to] of chunksOf(lessons, random)) trainer.chunk(lesson, from, to);
    if (epoch >= epochs / 2) trainer.weights.forEach((weight, i) => (sum[i]! += weight));
  }
  return Int8Array.from(sum, (value) => Math.max(-127, Math.min(127, Math.round((100 * value) / (epochs - Math.ceil(epochs / 2))))));
}
