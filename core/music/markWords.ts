import type { Finger, MarkValue, Slot } from './mark.ts';
import type { Seats } from './seat.ts';
import { compareTimes, fraction, type ExactTime } from './time.ts';

const STRINGS = ['I', 'II', 'III', 'IV'] as const;

const NOTHING: Record<Slot, string> = {
  finger: 'no finger',
  string: 'no string',
  reach: 'no extension or contraction',
  harmonic: 'no harmonic',
  bow: 'no bow sign',
  change: 'no bow change',
  retake: 'no retake',
  hooked: 'not hooked',
  slur: 'slur as printed',
  text: 'no words',
};

function fingerWords(finger: Finger): string {
  return finger === 0 ? 'open string' : finger === 'thumb' ? 'thumb' : `finger ${finger}`;
}

function beatWords(after: ExactTime, beat: ExactTime): string {
  const beats = fraction(after).div(fraction(beat));
  return `${beats.toFraction(true)} ${beats.compare(1) > 0 ? 'beats' : 'beat'}`;
}

function changeWords(after: ExactTime, beat: ExactTime): string {
  return compareTimes(after, 0) === 0 ? 'bow change as the note begins' : `bow change ${beatWords(after, beat)} into the note`;
}

/**
 * A mark in a player's words. `beat`: quarters a beat lasts (3/2 in 6/8), above 0.
 * Example: `markWords({ kind: 'change', after: '3/2' })` is "bow change 1 1/2 beats into the note".
 */
export function markWords(value: MarkValue, beat: ExactTime = 1): string {
  switch (value.kind) {
    case 'finger':
      return value.substitution === undefined ? fingerWords(value.finger) : `${fingerWords(value.finger)}, then ${fingerWords(value.substitution)} on the same note`;
    case 'string':
      return `string ${STRINGS[value.string - 1]}`;
    case 'reach':
      return value.reach;
    case 'harmonic':
      return value.harmonic === 'natural' ? 'harmonic' : 'artificial harmonic';
    case 'bow':
      return `${value.bow}-bow`;
    case 'change':
      return changeWords(value.after, beat);
    case 'retake':
    case 'hooked':
      return value.kind;
    case 'slur':
      return value.slur === 'split' ? 'new slur from this note' : 'slur goes on to the next note';
    case 'text':
      return `“${value.text}”`;
    case 'none':
      return value.after === undefined ? NOTHING[value.slot] : `no ${changeWords(value.after, beat)}`;
  }
}

/** Whose part a mark is on. Example: `seatWords(['1o', '3i'])` is "desk 1 outside, desk 3 inside". */
export function seatWords(seats: Seats): string {
  if (seats === 'all') return 'the whole section';
  return seats.map((seat) => `desk ${seat.slice(0, -1)} ${seat.endsWith('o') ? 'outside' : 'inside'}`).join(', ');
}
