import { WHY_NOT_CARRIED } from '../../core/matching/editions/whyWords.ts';
import { capital } from './capital.ts';
import { count } from './english.ts';

/** What a corrected edition changed. */
export const changed = {
  title: (part: string) => `${part}: what changed`,
  from: (file: string) => `beside ${file}`,
  open: 'what changed',
  comes: 'The two editions are laid beside each other.',
  none: 'No corrected score was laid over this part. There is nothing to compare.',
  same: 'Both editions have the same notes. Every mark stayed where it was.',
  all: (places: number) => `${count(places, 'place')} changed. No mark was left over.`,
  left: (marks: number) => `${count(marks, 'mark')} did not go along.`,
  where: (before: string | null, after: string | null) => (before === null ? `New: ${after}` : after === null ? `Gone: ${before}` : before === after ? capital(before) : `${capital(before)}, now ${after}`),
  old: 'The old edition',
  now: 'The new edition',
  notThere: 'Nothing of it stands here.',
  stood: (mark: string, note: string, where: string) => `${mark} on ${note}, ${where}.`,
  ink: 'inked in',
  slip: 'on a slip',
  why: WHY_NOT_CARRIED as Readonly<Record<keyof typeof WHY_NOT_CARRIED, string>>,
  put: 'put it here',
  leaveOut: 'leave it out',
  again: 'look at it again',
  onto: (note: string, where: string) => `To go on ${note}, ${where}.`,
  noPlace: 'Tap a note of the new edition, or press an arrow key.',
  wasPut: (name: string) => `Put on a note by ${name}.`,
  wasLeft: (name: string) => `Left out by ${name}.`,
  isPut: 'It stands there now.',
  isProposed: 'It lies there now on a slip for the section.',
  isLeft: 'Left out. The old edition keeps it in sight here.',
  isOpen: 'It is open again.',
  keys: 'Up and down: the mark · left and right: the note · Enter puts it there · Backspace leaves it out',
  reader: 'Only those who play in the section put marks on.',
  keeper: 'The principal and the librarian say what is left out.',
  said: (n: number) => `${count(n, 'thing')} said here ${n === 1 ? 'is' : 'are'} still open. Look whether ${n === 1 ? 'it holds' : 'they hold'}.`,
  mutes: (n: number) => (n === 1 ? 'One place put to rest here is watched again.' : `${count(n, 'place')} put to rest here are watched again.`),
};
