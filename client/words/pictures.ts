import { HAND_IN_ENGLISH } from '../../core/fingering/words/english.ts';
import type { HandWords } from '../../core/fingering/words/handWords.ts';
import { count } from './english.ts';

/** Words of the pictures: the fingerboard, two fingerings side by side, the past of a measure. */
export const board = {
  title: (name: string) => `The hand on the fingerboard, ${name}`,
  none: 'Put the rosin on a note of this passage, or point at one, to see the hand on the fingerboard.',
  thumb: 'thumb position',
  string: (name: string) => `${name} string`,
  open: (string: string, position: string, low: number, high: number) => `${string}, open. The hand waits in ${position}, from ${low} to ${high} mm.`,
  stopped: (string: string, finger: string, mm: number, position: string, low: number, high: number) => `${string}, ${finger}, ${mm} mm from the nut; the hand is in ${position}, from ${low} to ${high} mm.`,
  reach: (mm: number) => `The finger lies ${mm} mm outside the hand.`,
  unit: 'mm',
  hand: HAND_IN_ENGLISH as Pick<HandWords, 'finger' | 'position'>,
};

export const compare = {
  title: (a: string, b: string) => `Fingering ${a} above, fingering ${b} below`,
  staff: (a: string, b: string) => `The music with the figures of ${a} above the staff, and below it those of ${b} where they are not the same`,
  rule: 'A thick rule beside the staff says where the two are not the same.',
  note: 'Note',
  lay: { a: 'lay it above', b: 'lay it below' },
  short: { a: 'above', b: 'below' },
  apart: 'put the two away',
};

const slipOf = (what: string) => (slip: string | null): string => `${what} ${slip ?? ''}`.trim();

export const past = {
  title: (measure: string) => `The history of measure ${measure}`,
  picture: 'The history as a picture; it scrolls sideways',
  sum: (slips: number, moments: number) => `${count(slips, 'slip')}, ${count(moments, 'moment').toLowerCase()} from left to right; the list below says each.`,
  itself: 'talk',
  working: 'The history is being fetched.',
  failed: 'The history could not be fetched. What this stand knows is listed below.',
  again: 'try again',
  none: 'Nothing was laid or said here yet.',
  show: 'its history, from the first slip on',
  off: 'put the history away',
  kinds: {
    proposed: slipOf('laid slip'), revised: slipOf('wrote anew slip'), for: slipOf('voted for'), against: slipOf('voted against'), voteTaken: slipOf('took the vote back on'), adopted: slipOf('inked in'),
    setAside: slipOf('set aside'), withdrawn: slipOf('took back'), restored: () => 'went back to earlier marks', said: (slip: string | null) => (slip ? `said of ${slip}` : 'said'), settled: (slip: string | null) => (slip ? `settled what was said of ${slip}` : 'settled what was said'),
  },
};
