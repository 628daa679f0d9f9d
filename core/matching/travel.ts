import { playedAnywhere } from './anywhere.ts';
import { carryBowing, type MarkedPart } from './carryBowing.ts';
import { playedTogether } from './together.ts';
import type { Likeness, Run } from './run.ts';
import { excludes, isOfTheBow, type Mark } from '../music/mark.ts';

/** Notes in a row that count as the same music where nobody looks first. Chosen, not measured. */
const LEAST = { unison: 6, rhythm: 16 };
const LEAST_ANYWHERE = { unison: 12, rhythm: 24 };

/** A passage of another part that plays what this part plays, and what would have to be marked there to bow it alike. */
export interface Travelled {
  /** Tells it from the others of the same two parts while neither changes. */
  key: string;
  likeness: Likeness;
  /** Ordinals of its first and last measure, there. */
  from: number;
  to: number;
  /** Where the bowing comes from. */
  model: { from: number; to: number };
  marks: Mark[];
}

/** Printed slurs alone are no reason to bow another section otherwise. */
const isBowed = (marks: readonly Mark[], { notes }: Run): boolean => {
  const here = new Set(notes.map(([note]) => note));
  return marks.some(({ note, value }) => here.has(note) && isOfTheBow(value));
};

const keyOf = ({ a, b, notes }: Run): string => `${a.line}.${a.first}-${b.line}.${b.first}-${notes.length}`;

/**
 * Where a bowing travels: the passages of `to` that have the music of `from`, at the same time first, then at any time in what is left, with the marks `carryBowing` would lay.
 * Passages nobody has marked a bow in, or that are bowed so already, are left out, and a mark that an earlier passage of the list contradicts. Order: at the same time, then by measure.
 * Example: violas in octaves with the first violins through eight measures are one passage of them.
 */
export function travel(from: MarkedPart, to: MarkedPart): Travelled[] {
  const together = playedTogether(from.part, to.part, LEAST);
  const taken = new Set(together.flatMap(({ notes }) => notes.map(([, note]) => note)));
  const elsewhere = playedAnywhere(from.part, to.part, LEAST_ANYWHERE).filter(({ notes }) => !notes.some(([, note]) => taken.has(note)));
  const said: Mark[] = [];
  const bowed = [...together, ...elsewhere].filter((run) => isBowed(from.marks, run));
  return bowed.flatMap((run): Travelled[] => {
    const marks = carryBowing(from, to, run).marks.filter((mark) => !said.some((other) => other.note === mark.note && excludes(other.value, mark.value)));
    said.push(...marks);
    return marks.length ? [{ key: keyOf(run), likeness: run.likeness, from: run.b.from, to: run.b.to, model: { from: run.a.from, to: run.a.to }, marks }] : [];
  });
}
