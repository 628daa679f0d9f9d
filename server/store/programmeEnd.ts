import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';

const HALF_A_DAY = 12 * 60 * 60 * 1000;

/**
 * The earliest day that it still is somewhere on Earth (UTC-12), as an ISO date: a programme is over when its last day is over everywhere, so that nobody loses
 * their part during a concert, wherever the orchestra plays.
 */
export const dayStill = (now: Date): string => new Date(now.getTime() - HALF_A_DAY).toISOString().slice(0, 10);

/** The last of a programme's days (ISO date), null while it has none. */
export const lastDay = ({ days }: Pick<ProgrammeBody, 'days'>): string | null => days.reduce<string | null>((last, { date }) => (last === null || date > last ? date : last), null);
