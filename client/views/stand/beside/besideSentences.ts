import type { OtherBows } from '../../../beside/messages.ts';
import { words } from '../../../words/words.ts';
import type { LaneBow } from './bowLanes.ts';

const list = (ordinals: readonly number[], name: (ordinal: number) => string): string => [...new Set(ordinals)].map(name).join(', ');

/** How a section's bows go beside mine, and whether it plays the same music here. `from`, `to`: ordinals of the line's first and last measure. */
export function besideSentences({ both, against }: { both: number; against: readonly LaneBow[] }, { same }: Pick<OtherBows, 'same'>, from: number, to: number, name: (ordinal: number) => string): string[] {
  const ways = both === 0 ? words.beside.apart : against.length === 0 ? words.beside.alike(both) : words.beside.against(both, against.length, list(against.map(({ bow }) => bow.measure), name));
  const here = same.flatMap(({ likeness, b }) => (b.from <= to && b.to >= from ? [{ likeness, from: Math.max(from, b.from), to: Math.min(to, b.to) }] : []));
  const unisons = here.filter(({ likeness }) => likeness === 'unison');
  const told = here.filter((run) => run.likeness === 'unison' || !unisons.some((unison) => unison.from <= run.from && run.to <= unison.to));
  return [ways, ...new Set(told.map(({ likeness, from, to }) => words.beside[likeness](words.inMeasures(name(from), name(to)))))];
}
