import type { Place } from '../../../core/fingering/frame.ts';
import type { Context } from '../../../core/fingering/fit/context.ts';
import { placeSlots, stepSlots } from '../../../core/fingering/fit/score.ts';
import { SLOTS, Slots } from '../../../core/fingering/fit/slots.ts';
import { emptyStep } from '../../../core/fingering/fit/step.ts';
import { contextsOf } from '../../../core/fingering/fit/context.ts';
import type { LineNote } from '../../../core/fingering/line.ts';
import type { Label, Piece } from './pieces.ts';

/** A piece ready for training: places per note and, per player, the index of the place taken (imputed where the label is no place). */
export interface Lesson {
  contexts: Context[];
  places: Place[][];
  /** players x notes. */
  taken: Int16Array[];
  weight: number;
}

function indexOf(places: Place[], label: Label | null): number {
  if (label === null) return -1;
  return places.findIndex((p) => p.string === label.string && p.finger === label.finger && (p.position === Math.max(1, label.position) || (label.finger === 0 && p.position === 5 && label.position > 5)));
}

/** Where a label is no place: same string and finger, else the first place on that string, else the first of all. */
function nearest(places: Place[], label: Label | null): number {
  if (label === null) return 0;
  const graded = places.map((p) => (p.string === label.string ? 4 : 0) + (p.finger === label.finger ? 2 : 0) - Math.abs(p.position - label.position) / 16);
  return graded.indexOf(Math.max(...graded));
}

export function lessonOf(piece: Piece, weight: number, placesOf: (note: LineNote) => Place[]): Lesson {
  const places = piece.line.map(placesOf);
  const exact = piece.players.map((labels) => labels.map((label, i) => indexOf(places[i]!, label)));
  const consensus = piece.line.map((_, i) => {
    const votes = exact.map((indices) => indices[i]!).filter((index) => index >= 0);
    if (votes.length === 0) return nearest(places[i]!, piece.players[0]![i] ?? null);
    const count = (v: number): number => votes.filter((other) => other === v).length;
    return votes.reduce((best, v) => (count(v) > count(best) ? v : best));
  });
  return { contexts: contextsOf(piece.line), places, weight, taken: exact.map((indices) => Int16Array.from(indices, (index, i) => (index >= 0 ? index : consensus[i]!))) };
}

const ROOM = 48;

/** Accumulates the gradient of a chunk and applies AdaGrad with shrinkage on touched slots. */
export class Trainer {
  readonly weights = new Float32Array(SLOTS);
  private readonly squares = new Float32Array(SLOTS);
  private readonly gradient = new Float32Array(SLOTS);
  private readonly marked = new Uint8Array(SLOTS);
  private readonly touched: number[] = [];
  private readonly slots = new Slots();
  private readonly step = emptyStep();
  private features = new Int32Array(1 << 20);

  constructor(private readonly rate = 0.15, private readonly shrink = 1.5) {}

  private push(slot: number, amount: number): void {
    if (this.marked[slot] === 0) {
      this.marked[slot] = 1;
      this.touched.push(slot);
    }
    this.gradient[slot]! += amount;
  }

  /** One step of ascent on notes [from, to) of a lesson. */
  chunk(lesson: Lesson, from: number, to: number): void {
    const n = to - from;
    const unary: Float64Array[] = [];
    const pair: Float64Array[] = [];
    const starts: Int32Array[] = [];
    let used = 0;
    const keep = (): number => {
      const { slots } = this;
      if (used + slots.count + 1 > this.features.length) {
        const grown = new Int32Array(this.features.length * 2);
        grown.set(this.features);
        this.features = grown;
      }
      const at = used;
      this.features[used++] = slots.count;
      for (let i = 0; i < slots.count; i += 1) this.features[used++] = slots.at[i]!;
      return at;
    };
    const sum = (at: number): number => {
      let total = 0;
      const end = at + 1 + this.features[at]!;
      for (let i = at + 1; i < end; i += 1) total += this.weights[this.features[i]!]!;
      return total;
    };
    for (let k = 0; k < n; k += 1) {
      const i = from + k;
      const here = lesson.places[i]!;
      const context = lesson.contexts[i]!;
      const before = k > 0 ? lesson.places[i - 1]! : [];
      const at = new Int32Array(here.length * (1 + before.length));
      const u = new Float64Array(here.length);
      const p = new Float64Array(here.length * before.length);
      here.forEach((place, b) => {
        placeSlots(this.slots, context, place);
        at[b] = keep();
        u[b] = sum(at[b]!);
        before.forEach((other, a) => {
          stepSlots(this.slots, this.step, lesson.contexts[i - 1]!, context, other, place);
          const index = here.length + a * here.length + b;
          at[index] = keep();
          p[a * here.length + b] = sum(at[index]!);
        });
      });
      unary.push(u);
      pair.push(p);
      starts.push(at);
    }
    const { marginals, pairs } = forwardBackward(unary, pair);
    const share = 1 / lesson.taken.length;
    for (let k = 0; k < n; k += 1) {
      const i = from + k;
      const size = unary[k]!.length;
      const wanted = new Float64Array(size);
      const wantedPairs = new Float64Array(pair[k]!.length);
      for (const player of lesson.taken) {
        wanted[player[i]!]! += share;
        if (k > 0) wantedPairs[player[i - 1]! * size + player[i]!]! += share;
      }
      for (let b = 0; b < size; b += 1) this.spread(starts[k]![b]!, lesson.weight * (wanted[b]! - marginals[k]![b]!));
      for (let ab = 0; ab < wantedPairs.length; ab += 1) this.spread(starts[k]![size + ab]!, lesson.weight * (wantedPairs[ab]! - pairs[k]![ab]!));
    }
    this.apply();
  }

  private spread(at: number, amount: number): void {
    if (Math.abs(amount) < 1e-4) return;
    const end = at + 1 + this.features[at]!;
    for (let i = at + 1; i < end; i += 1) this.push(this.features[i]!, amount);
  }

  private apply(): void {
    for (const slot of this.touched) {
      const g = this.gradient[slot]! - this.shrink * this.weights[slot]! * SHRINK_PER_CHUNK;
      this.squares[slot]! += g * g;
      this.weights[slot]! += (this.rate * g) / Math.sqrt(this.squares[slot]! + 1e-8);
      this.gradient[slot] = 0;
      this.marked[slot] = 0;
    }
    this.touched.length = 0;
  }
}
const SHRINK_PER_CHUNK = Number(process.env.SHRINK ?? 1);

/** Marginals of a chain of log potentials; `pair[k]` leads from layer k-1 to k, row by row. Result: per-layer and per-step probabilities. */
export function forwardBackward(unary: Float64Array[], pair: Float64Array[]): { marginals: Float64Array[]; pairs: Float64Array[] } {
  const n = unary.length;
  const forward: Float64Array[] = [];
  const expUnary = unary.map((u) => {
    const top = Math.max(...u);
    return u.map((value) => Math.exp(value - top));
  });
  const expPair = pair.map((p) => {
    let top = -Infinity;
    for (const value of p) if (value > top) top = value;
    return p.map((value) => Math.exp(value - top));
  });
  const normalise = (values: Float64Array): Float64Array => {
    let total = 0;
    for (const value of values) total += value;
    for (let i = 0; i < values.length; i += 1) values[i]! /= total;
    return values;
  };
  for (let k = 0; k < n; k += 1) {
    const size = unary[k]!.length;
    const values = Float64Array.from(expUnary[k]!);
    if (k > 0) {
      for (let b = 0; b < size; b += 1) {
        let total = 0;
        for (let a = 0; a < forward[k - 1]!.length; a += 1) total += forward[k - 1]![a]! * expPair[k]![a * size + b]!;
        values[b]! *= total;
      }
    }
    forward.push(normalise(values));
  }
  const backward: Float64Array[] = Array<Float64Array>(n);
  backward[n - 1] = new Float64Array(unary[n - 1]!.length).fill(1);
  for (let k = n - 2; k >= 0; k -= 1) {
    const [size, next] = [unary[k]!.length, unary[k + 1]!.length];
    const values = new Float64Array(size);
    for (let a = 0; a < size; a += 1) for (let b = 0; b < next; b += 1) values[a]! += expPair[k + 1]![a * next + b]! * expUnary[k + 1]![b]! * backward[k + 1]![b]!;
    backward[k] = normalise(values);
  }
  const marginals = forward.map((values, k) => normalise(values.map((value, b) => value * backward[k]![b]!)));
  const pairs = pair.map((_, k) => {
    if (k === 0) return new Float64Array(0);
    const [before, size] = [unary[k - 1]!.length, unary[k]!.length];
    const values = new Float64Array(before * size);
    for (let a = 0; a < before; a += 1) for (let b = 0; b < size; b += 1) values[a * size + b] = forward[k - 1]![a]! * expPair[k]![a * size + b]! * expUnary[k]![b]! * backward[k]![b]!;
    return normalise(values);
  });
  return { marginals, pairs };
}

export const NOTES_A_CHUNK = 128;

/** Deterministic noise for chunk offsets and order. */
export function mulberry(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export function train(lessons: Lesson[], seed: number, epochs = 24): Float32Array {
  const random = mulberry(seed);
  const trainer = new Trainer();
  const sum = new Float64Array(SLOTS);
  let summed = 0;
  for (let epoch = 0; epoch < epochs; epoch += 1) {
    const chunks: [Lesson, number, number][] = [];
    for (const lesson of lessons) {
      const offset = Math.floor(random() * NOTES_A_CHUNK);
      const n = lesson.places.length;
      for (let from = -offset; from < n; from += NOTES_A_CHUNK) if (Math.min(n, from + NOTES_A_CHUNK) - Math.max(0, from) > 1) chunks.push([lesson, Math.max(0, from), Math.min(n, from + NOTES_A_CHUNK)]);
    }
    for (let i = chunks.length - 1; i > 0; i -= 1) {
      const j = Math.floor(random() * (i + 1));
      [chunks[i], chunks[j]] = [chunks[j]!, chunks[i]!];
    }
    for (const [lesson, from, to] of chunks) trainer.chunk(lesson, from, to);
    if (epoch >= epochs / 2) {
      for (let i = 0; i < SLOTS; i += 1) sum[i]! += trainer.weights[i]!;
      summed += 1;
    }
  }
  return Float32Array.from(sum, (value) => value / summed);
}
