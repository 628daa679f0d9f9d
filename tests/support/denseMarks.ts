import { markName, type ShownMark } from '../../core/engraving/marks/placeMarks.ts';
import type { MarkValue } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';
import type { Seats } from '../../core/music/seat.ts';
import type { Chance } from './chance.ts';

/** A part written full: figures on most notes, two seats' own where they differ, bows, strings, reaches, changes and words, each slot of a note once. */
export function denseMarks(part: Part, chance: Chance): ShownMark[] {
  const finger = (): MarkValue => ({ kind: 'finger', finger: chance.pick([0, 1, 2, 3, 4] as const) });
  return part.measures.flatMap(({ notes }) =>
    notes.filter(({ rest, hidden, pitch }) => !rest && !hidden && pitch).flatMap(({ id, chord }): ShownMark[] => {
      const inked = (value: MarkValue, seats: Seats = 'all'): ShownMark => ({ note: id, value, seats, state: 'adopted' });
      const marks: ShownMark[] = [];
      if (chance.happens(0.6)) {
        if (chance.happens(0.2)) marks.push(inked(finger(), ['1o', '2o']), inked(finger(), ['1i', '2i']));
        else marks.push(inked(finger()));
      }
      if (!chord && chance.happens(0.25)) marks.push(inked({ kind: 'bow', bow: chance.pick(['up', 'down'] as const) }));
      if (chance.happens(0.06)) marks.push(inked({ kind: 'string', string: chance.pick([1, 2, 3, 4]) }));
      if (chance.happens(0.04)) marks.push(inked({ kind: 'reach', reach: 'extension' }));
      if (!chord && chance.happens(0.04)) marks.push(inked(chance.pick<MarkValue>([{ kind: 'retake' }, { kind: 'hooked' }])));
      if (!chord && chance.happens(0.02)) marks.push(inked({ kind: 'text', text: chance.pick(['near the point', 'whole bow']) }));
      return marks;
    }),
  );
}

/** How many marks of each name stand on each note. */
export const counted = (marks: readonly { note: string; name: string }[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const { note, name } of marks) counts.set(`${note} ${name}`, (counts.get(`${note} ${name}`) ?? 0) + 1);
  return counts;
};

export const named = (marks: readonly ShownMark[]): { note: string; name: string }[] => marks.map(({ note, value }) => ({ note, name: markName(value) }));
