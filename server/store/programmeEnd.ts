import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';

/** The last of a programme's days (ISO date), null while it has none. */
export const lastDay = ({ days }: Pick<ProgrammeBody, 'days'>): string | null => days.reduce<string | null>((last, { date }) => (last === null || date > last ? date : last), null);
