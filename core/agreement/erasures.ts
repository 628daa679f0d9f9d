import { placesOf } from './facts.ts';
import { deskOf, isFor, type SeatId } from '../music/seat.ts';
import type { AgreementState, PartFacts, StandingMark } from './state.ts';

/** A pencilled mark that is on the paper of a desk. */
export interface Erasure {
  /** Ordinal, from 1. */
  measure: number;
  note: string;
  /** Desk number; null where the part has no seats. */
  desk: number | null;
  one: StandingMark;
}

/** When the part was given out: from the first time it was on the stands, or printed. Row of the log, Infinity where it never was. */
function handedOut(stages: readonly { seq: number; stage: string }[]): number {
  return Math.min(Infinity, ...stages.filter(({ stage }) => stage === 'onStands' || stage === 'printed').map(({ seq }) => seq));
}

/**
 * What has to be erased from hired material, by measure, then by desk: every mark in force, and every mark that was replaced after the part had been handed out. Marks of kind
 * `none` rub out print and leave no pencil. `stages`: the stages the part went through, by row of the log. Marks on notes that are gone are left out.
 * Example: a finger for all of three desks, inked in, is three rows.
 */
export function erasures(state: AgreementState, facts: PartFacts, stages: readonly { seq: number; stage: string }[]): Erasure[] {
  const out = handedOut(stages);
  const place = placesOf(facts);
  const desksOf = ({ seats }: StandingMark): (number | null)[] => {
    const here = facts.seats.filter((seat: SeatId) => isFor(seats, seat));
    return facts.seats.length ? [...new Set(here.map(deskOf))] : [null];
  };
  return state.ink
    .filter(({ mark, superseded }) => facts.notes.has(mark.note) && mark.value.kind !== 'none' && (superseded === null || superseded.seq > out))
    .flatMap((one) => desksOf(one).map((desk): Erasure => ({ measure: facts.notes.get(one.mark.note)!, note: one.mark.note, desk, one })))
    .sort((a, b) => a.measure - b.measure || (a.desk ?? 0) - (b.desk ?? 0) || place.get(a.note)! - place.get(b.note)!);
}
