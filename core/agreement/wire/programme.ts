import { z } from 'zod';
import type { SeatId } from '../../music/seat.ts';
import { STAGES } from '../state.ts';

/** One day of a programme. `time`: "19:30" where it is known; `words`: where, what for. */
export const ProgrammeDay = z.strictObject({
  kind: z.enum(['rehearsal', 'concert']),
  date: z.iso.date(),
  time: z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time is written like 19:30').nullable().default(null),
  words: z.string().trim().max(120).default(''),
});
export type ProgrammeDay = z.infer<typeof ProgrammeDay>;

const moment = ({ date, time }: ProgrammeDay): string => `${date} ${time ?? ''}`;
const inOrder = (days: ProgrammeDay[]): ProgrammeDay[] => days.sort((a, b) => (moment(a) < moment(b) ? -1 : 1));

/** By stage: the day somebody chose; null where there is to be no deadline; absent where it is worked out. */
export const ChosenDeadlines = z.partialRecord(z.enum(STAGES).exclude(['pulled']), z.iso.date().nullable());
export type ChosenDeadlines = z.infer<typeof ChosenDeadlines>;

/** POST /api/programmes and PUT /api/programmes/:programme */
export const ProgrammeBody = z.strictObject({
  title: z.string().trim().min(1).max(120),
  season: z.string().trim().max(60).default(''),
  conductor: z.string().trim().max(80).default(''),
  days: z.array(ProgrammeDay).max(60).default([]).transform(inOrder),
  deadlines: ChosenDeadlines.default({}),
});
export type ProgrammeBody = z.infer<typeof ProgrammeBody>;

/** Who sits where in a section for one programme, where that is not as usual. */
export interface ProgrammeSeating {
  section: string;
  /** Front to back. */
  seats: { seat: SeatId; person: { id: string; name: string } | null }[];
  principal: { id: string; name: string } | null;
}
