import type { MarkValue } from './mark.ts';
import type { Seats } from './seat.ts';
import { compareTimes, fraction, type ExactTime } from './time.ts';
import { MARKS_IN_ENGLISH } from './words/marksInEnglish.ts';
import type { MarkTable } from './words/markTable.ts';

const STRINGS = ['I', 'II', 'III', 'IV'] as const;

function changeWords(table: MarkTable, after: ExactTime, beat: ExactTime): string {
  if (compareTimes(after, 0) === 0) return table.changeAtOnce;
  const beats = fraction(after).div(fraction(beat));
  return table.changeAfter(beats.toFraction(true), beats.compare(1) > 0);
}

/**
 * A mark in a player's words. `beat`: quarters a beat lasts (3/2 in 6/8), above 0; `table`: the language, English where absent.
 * Example: `markWords({ kind: 'change', after: '3/2' })` is "bow change 1 1/2 beats into the note".
 */
export function markWords(value: MarkValue, beat: ExactTime = 1, table: MarkTable = MARKS_IN_ENGLISH): string {
  switch (value.kind) {
    case 'finger':
      return value.substitution === undefined ? table.finger(value.finger) : table.substitution(table.finger(value.finger), table.finger(value.substitution));
    case 'string':
      return table.string(STRINGS[value.string - 1]!);
    case 'reach':
      return table.reach[value.reach];
    case 'harmonic':
      return table.harmonic[value.harmonic];
    case 'bow':
      return table.bow[value.bow];
    case 'change':
      return changeWords(table, value.after, beat);
    case 'retake':
    case 'hooked':
      return table[value.kind];
    case 'slur':
      return table.slur[value.slur];
    case 'text':
      return table.text(value.text);
    case 'none':
      return value.after === undefined ? table.nothing[value.slot] : table.noChange(changeWords(table, value.after, beat));
  }
}

/** Whose part a mark is on. Example: `seatWords(['1o', '3i'])` is "desk 1 outside, desk 3 inside". */
export function seatWords(seats: Seats, table: MarkTable = MARKS_IN_ENGLISH): string {
  if (seats === 'all') return table.everyone;
  return seats.map((seat) => table.seat(seat.slice(0, -1), seat.endsWith('o'))).join(', ');
}
