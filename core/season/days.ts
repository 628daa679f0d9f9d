import type { ProgrammeDay } from '../agreement/wire/programme.ts';

/**
 * The first day of a kind as an ISO day, or null where none is known.
 * Example: `firstDay(days, 'concert')` is "2027-03-12" for concerts on the 12th and 13th of March 2027.
 */
export function firstDay(days: readonly ProgrammeDay[], kind: ProgrammeDay['kind']): string | null {
  const dates = days.filter((day) => day.kind === kind).map(({ date }) => date);
  return dates.sort()[0] ?? null;
}

const DAY_MS = 86_400_000;

/** Whole days from one ISO day to another, negative backwards. Example: `daysBetween('2027-02-28', '2027-03-01')` is 1. */
export function daysBetween(from: string, to: string): number {
  return Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);
}

/** The ISO day so many days before another. Example: `daysBefore('2027-03-01', 14)` is "2027-02-15". */
export function daysBefore(date: string, days: number): string {
  return new Date(Date.parse(date) - days * DAY_MS).toISOString().slice(0, 10);
}
