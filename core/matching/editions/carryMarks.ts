import { isOfTheBow, type Mark } from '../../music/mark.ts';
import type { Part } from '../../music/part.ts';
import { type ChangedPlace, changedPlaces } from './changedPlaces.ts';
import { type Apart, editionsApart } from './editionsApart.ts';
import { fatesOf, type WhyLost } from './fates.ts';
import { measuresNow } from './measuresNow.ts';
import { slursRound } from './slursRound.ts';

export type { ChangedPlace, Measures } from './changedPlaces.ts';
export type { WhyLost } from './fates.ts';

/** Why a mark was not carried. `slur`: the printed slurs round a bowing changed. `unknown`: the older part has no such note. */
export type WhyNotCarried = WhyLost | 'slur' | 'unknown';

export interface LostMark {
  /** As it stood, on a note of the older part. */
  mark: Mark;
  /** Ordinal of its measure in the older part; null where there is no such note. */
  measure: number | null;
  why: WhyNotCarried;
  /** The likeliest note of the newer part, to be looked at; null where there is none. */
  maybe: { note: string; measure: number } | null;
}

export interface CarriedMarks {
  /** On notes of the newer part, in the order given. */
  kept: Mark[];
  lost: LostMark[];
  /** Where what is played differs. */
  changed: ChangedPlace[];
  /** What each measure of the older part is now (`measuresNow`). */
  measures: number[];
}

const measureOf = (part: Part): Map<string, number> => new Map(part.measures.flatMap(({ ordinal, notes }) => notes.map(({ id }): [string, number] => [id, ordinal])));

/**
 * Carries marks from one edition of a part to another.
 * A mark is kept where its note is the same note (`fatesOf`: pitch as spelled, length, what begins with it, what stands before and after, and only one place it
 * can be) and, for a bowing, lies under the printed slurs as it did. Nothing else is guessed: every other mark is listed with why, and the likeliest place.
 * Never throws. Invariants: kept and lost together are the marks given; `older` laid over itself keeps all that stand on its notes.
 * Oracle: edits of real files whose truth is known note by note (`tests/core/matching/editions/edits`).
 * Example: `carryMarks(stored, corrected, marks).lost.map(({ measure, why }) => [measure, why])`.
 */
export function carryMarks(older: Part, newer: Part, marks: readonly Mark[], apart: Apart = editionsApart(older, newer)): CarriedMarks {
  const fates = fatesOf(apart);
  const [here, there] = [measureOf(older), measureOf(newer)];
  const [slursHere, slursThere] = [slursRound(older), slursRound(newer)];
  const kept: Mark[] = [];
  const lost: LostMark[] = [];
  for (const mark of marks) {
    const fate = fates.get(mark.note);
    const now = fate?.note ?? null;
    const isBound = isOfTheBow(mark.value) && now !== null && slursHere(mark.note) !== slursThere(now);
    const why = fate ? (fate.why ?? (isBound ? 'slur' : null)) : 'unknown';
    if (why === null) kept.push({ ...mark, note: now! });
    else lost.push({ mark, measure: here.get(mark.note) ?? null, why, maybe: now === null ? null : { note: now, measure: there.get(now)! } });
  }
  return { kept, lost, changed: changedPlaces(apart), measures: measuresNow(apart, older.measures.length, newer.measures.length) };
}
