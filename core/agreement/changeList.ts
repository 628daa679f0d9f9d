import { placesOf } from './facts.ts';
import { markWords } from '../music/markWords.ts';
import type { Mark } from '../music/mark.ts';
import type { Seats } from '../music/seat.ts';
import type { AgreementState, PartFacts, Stamp } from './state.ts';

/** One mark that was inked in, for the librarian's list of changes. The caller maps the ordinal to its printed number and the note to its name. */
export interface Change {
  /** Ordinal, from 1. */
  measure: number;
  /** Note id. */
  note: string;
  mark: Mark;
  /** The mark in a player's words. */
  what: string;
  seats: Seats;
  proposedBy: string;
  /** Who inked it in, and when (ISO 8601, UTC). */
  who: string;
  when: string;
  why: string;
  status: 'in force' | 'superseded' | 'note gone';
  /** What took its place. */
  superseded: (Stamp & { why: string }) | null;
}

/**
 * Everything that was ever inked in, superseded marks too, in the order of the music and for one note in the order of the log.
 * "note gone": the note is not in the part any more (a corrected edition); such rows keep the measure they had.
 * Example: `changeList(state, factsOf(part, seats)).map(({ measure, what }) => [measure, what])`.
 */
export function changeList(state: AgreementState, facts: PartFacts): Change[] {
  const place = placesOf(facts);
  const rows = state.ink.map((one): Change => ({
    measure: facts.notes.get(one.mark.note) ?? one.measure,
    note: one.mark.note,
    mark: one.mark,
    what: markWords(one.mark.value),
    seats: one.seats,
    proposedBy: state.proposals[one.proposal]!.proposed.name,
    who: one.inked.name,
    when: one.inked.at,
    why: one.why,
    status: one.superseded ? 'superseded' : facts.notes.has(one.mark.note) ? 'in force' : 'note gone',
    superseded: one.superseded,
  }));
  return rows.sort((a, b) => a.measure - b.measure || (place.get(a.note) ?? Infinity) - (place.get(b.note) ?? Infinity) || 0);
}
