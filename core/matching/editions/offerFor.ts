import type { Mark } from '../../music/mark.ts';
import type { Part } from '../../music/part.ts';
import { type CarriedMarks, carryMarks } from './carryMarks.ts';
import { type Apart, editionsApart } from './editionsApart.ts';
import { samePart } from './samePart.ts';

/** Marks of one part and the music they stood on. */
export interface MarkedMusic {
  part: Part;
  marks: readonly Mark[];
}

/** A set of bowings as it is kept: part by part. */
export interface MarkSet {
  parts: readonly MarkedMusic[];
}

export interface Offer extends CarriedMarks {
  /** The part of the set that was matched. */
  from: MarkedMusic;
  /** Share of what is played in the new part that the set's music has in the same order, 0 to 1. */
  matched: number;
}

/** Below this share a part of another name may be the one meant. Chosen, not measured. */
const PLAINLY_THE_SAME = 0.5;

function matchedShare({ before, after, isSame }: Apart): number {
  const played = after.filter(({ notes }) => notes.length > 0).length;
  const same = before.filter(({ notes }, at) => notes.length > 0 && isSame(at)).length;
  return played ? same / played : 0;
}

/**
 * Offers a kept set of marks to a part of the same or another edition: the part of its name, or, where that is plainly other music, the part of its instrument
 * that shares most. Marks go where `carryMarks` is sure of them. null where the set has no part of this instrument or nothing in common with it.
 * Example: a set of 2024 offered to a new edition with the same notes has `matched` 1 and keeps every fingering.
 */
export function offerFor(set: MarkSet, part: Part): Offer | null {
  const compared = (from: MarkedMusic) => {
    const apart = editionsApart(from.part, part);
    return { from, apart, matched: matchedShare(apart) };
  };
  const alike = set.parts.filter((one) => one.part.instrument === part.instrument);
  const named = samePart(part, alike.map((one) => one.part));
  const first = alike.find((one) => one.part === named);
  let best = first && compared(first);
  for (const other of alike) {
    if (best && best.matched >= PLAINLY_THE_SAME) break;
    if (other === first) continue;
    const found = compared(other);
    if (!best || found.matched > best.matched) best = found;
  }
  if (!best || best.matched === 0) return null;
  return { ...carryMarks(best.from.part, part, best.from.marks, best.apart), from: best.from, matched: best.matched };
}
