import { STAGES, type Stage } from '../agreement/state.ts';
import type { ChosenDeadlines, ProgrammeDay } from '../agreement/wire/programme.ts';
import { daysBefore, firstDay } from './days.ts';

/**
 * By when a part is usually to have come so far, in weeks before the first rehearsal. Sources in core/SOURCES.md: first-stand parts with the
 * principals some twelve weeks before (schnack2009, yakima); with the players two weeks before the first rehearsal (nec). Six and three weeks
 * between them are common practice, no source. "Printed" has no day of its own: printing fills the week between inked in and on the stands.
 */
export const WEEKS_BEFORE: Readonly<Partial<Record<Stage, number>>> = { withPrincipal: 12, roundSection: 6, inkedIn: 3, onStands: 2 };

export interface Deadline {
  stage: Stage;
  /** ISO day by whose end every part should have come so far. */
  date: string;
}

/**
 * The deadlines of a programme in the order of the stages: what somebody chose, else worked out backwards from the first rehearsal. A stage
 * chosen to have none is left out, and without a rehearsal only chosen days remain.
 * Example: a first rehearsal on 2027-03-29 puts "on the stands" on 2027-03-15.
 */
export function deadlinesOf(days: readonly ProgrammeDay[], chosen: ChosenDeadlines): Deadline[] {
  const first = firstDay(days, 'rehearsal');
  return STAGES.flatMap((stage) => {
    const weeks = WEEKS_BEFORE[stage];
    const usual = first !== null && weeks !== undefined ? daysBefore(first, weeks * 7) : null;
    const said = stage === 'pulled' ? null : chosen[stage];
    const date = said === undefined ? usual : said;
    return date === null ? [] : [{ stage, date }];
  });
}
