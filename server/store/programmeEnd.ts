import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { People, Person } from './people.ts';

const HALF_A_DAY = 12 * 60 * 60 * 1000;

/**
 * The earliest day that it still is somewhere on Earth (UTC-12), as an ISO date: a programme is over when its last day is over everywhere, so that nobody loses
 * their part during a concert, wherever the orchestra plays.
 */
export const dayStill = (now: Date): string => new Date(now.getTime() - HALF_A_DAY).toISOString().slice(0, 10);

/** Programmes that somebody may open: of whoever only deputises those they sit in that are not over yet; null: all. */
export const programmesOpenTo = async (people: Pick<People, 'seatedIn'>, { id, deputy }: Pick<Person, 'id' | 'deputy'>, now: Date): Promise<ReadonlySet<string> | null> =>
  deputy ? new Set(await people.seatedIn(id, dayStill(now))) : null;

/** The last of a programme's days (ISO date), null while it has none. */
export const lastDay = ({ days }: Pick<ProgrammeBody, 'days'>): string | null => days.reduce<string | null>((last, { date }) => (last === null || date > last ? date : last), null);
