import type { Severity } from '../../core/check/finding.ts';
import { capital } from './capital.ts';
import { count, day, listed } from './english.ts';

const clock = (at: Date): string => at.toLocaleTimeString('en-GB', { hour: '2-digit', minute: '2-digit' });

const counts: Record<Severity, (n: number) => string> = {
  cannotPlay: (n) => `${n} cannot be played`,
  collides: (n) => (n === 1 ? '1 collides' : `${n} collide`),
  worthALook: (n) => `${n} worth a look`,
};

/** Words of a look through the whole piece. */
export const piece = {
  title: (work: string) => `The whole piece: ${work}`,
  what: 'Reads every part beside all the others, with the marks as they stand now. You can go on with anything else meanwhile.',
  look: 'Look through the whole piece',
  again: 'Look through it again',
  join: 'Wait for it too',
  stop: 'Stop looking',
  stopped: 'You wait for it no more. Nothing was changed.',
  turn: 'The piece waits for its turn.',
  reading: (name: string, part: number, of: number) => `${name} is being read: part ${part} of ${of}.`,
  elsewhere: 'Somebody else in the house asked for this.',
  picture: (done: number, of: number) => `${count(done, 'part')} of ${of} read`,
  found: (watch: number, parts: number) => (watch ? `${count(watch, 'place')} to watch in ${count(parts, 'part').toLowerCase()}.` : 'Nothing to watch in any part.'),
  at: (at: string, now = new Date()) => `Looked through ${new Date(at).toDateString() === now.toDateString() ? '' : `on ${day(at, now)} `}at ${clock(new Date(at))}.`,
  before: (names: readonly string[]) => `This is from before something changed in ${listed(names)}. Look through it again.`,
  counts,
  rested: (n: number) => `${n} put to rest`,
  nothing: 'nothing to watch',
  comes: 'What was found here is being fetched.',
  onStand: (where: string) => `${capital(where)}, on the stand`,
  restedBy: (who: string, reason: string) => `Put to rest by ${who}: ${reason}`,
  more: (n: number) => `Show ${n} more`,
  list: (part: string) => `To watch in ${part}`,
};
