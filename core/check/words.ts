import type { Measure } from '../music/part.ts';
import { deskOf, isOutside, partnerOf, type SeatId } from '../music/seat.ts';

const NUMERALS = ['I', 'II', 'III', 'IV'] as const;

/** A string as players write it. Example: `stringNumeral(2)` is "II". */
export const stringNumeral = (string: 1 | 2 | 3 | 4): string => NUMERALS[string - 1]!;

/** A measure as printed; by its place where the print gives no number. */
export const measureName = (measure: Measure): string => (measure.number.trim() ? `measure ${measure.number.trim()}` : `the ${ordinalWord(measure.ordinal)} measure`);

function ordinalWord(n: number): string {
  const teen = n % 100 >= 11 && n % 100 <= 13;
  return `${n}${teen ? 'th' : (['th', 'st', 'nd', 'rd'][n % 10] ?? 'th')}`;
}

/** A number with its noun. Example: `counted(2, 'bow')` is "2 bows". */
export const counted = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? '' : 's'}`;

/** Names in a row. Example: `listed(['a', 'b', 'c'])` is "a, b and c". */
export const listed = (words: readonly string[]): string => (words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`);

/** Seats in words. `of` are all seats of the section. Example: 3o and 3i are "desk 3", 2i alone is "desk 2 inside". */
export function seatsInWords(seats: readonly SeatId[], of: readonly SeatId[]): string {
  if (!seats.length || of.every((seat) => seats.includes(seat))) return 'everyone';
  const whole = (seat: SeatId) => seats.includes(partnerOf(seat));
  const desks = [...new Set(seats.filter(whole).map(deskOf))];
  const singles = seats.filter((seat) => !whole(seat)).map((seat) => `desk ${deskOf(seat)} ${isOutside(seat) ? 'outside' : 'inside'}`);
  const wholeDesks = desks.length ? [`${desks.length > 1 ? 'desks' : 'desk'} ${listed(desks.map(String))}`] : [];
  return listed([...wholeDesks, ...singles]);
}
