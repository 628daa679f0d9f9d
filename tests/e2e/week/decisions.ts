import type { MarkValue } from '../../../core/music/mark.ts';
import { expect } from 'vitest';
import type { Reader } from '../reader.ts';
import type { Player } from '../player.ts';

/** What a principal decides in a measure: the keys, and the marks they are to come to, by the count of the note in its measure. */
export interface Decision {
  work: string;
  part: string;
  measure: string;
  why: string;
  keys: string[];
  marks: [note: number, value: MarkValue][];
}

export const DECISIONS: Decision[] = [
  {
    work: 'Salt Road', part: 'Violin I', measure: '2', why: 'Second position, so that the C does not ring.', keys: ['3', 'd', 'ArrowRight', '2', 'ArrowRight', '1'],
    marks: [[1, { kind: 'finger', finger: 3 }], [1, { kind: 'bow', bow: 'down' }], [2, { kind: 'finger', finger: 2 }], [3, { kind: 'finger', finger: 1 }]],
  },
  { work: 'Salt Road', part: 'Viola', measure: '25', why: 'Up, and across the lower strings.', keys: ['u', 'Shift+Digit3'], marks: [[1, { kind: 'bow', bow: 'up' }], [1, { kind: 'string', string: 3 }]] },
  { work: 'Lantern Dance', part: 'Violin I', measure: '3', why: 'Reach back for it.', keys: ['1', 'x'], marks: [[1, { kind: 'finger', finger: 1 }], [1, { kind: 'reach', reach: 'extension' }]] },
  { work: 'Lantern Dance', part: 'Viola', measure: '5', why: 'Lift the bow for the accent.', keys: ['r', 'ArrowRight', 'd'], marks: [[1, { kind: 'retake' }], [2, { kind: 'bow', bow: 'down' }]] },
  { work: 'Harbour Bells', part: 'Violin', measure: '1', why: 'All on the lower string.', keys: ['3', 'Shift+Digit3'], marks: [[1, { kind: 'finger', finger: 3 }], [1, { kind: 'string', string: 3 }]] },
  { work: 'Harbour Bells', part: 'Viola', measure: '2', why: 'Long enough for two bows.', keys: ['c'], marks: [[1, { kind: 'change', after: '1/2' }]] },
];

/** How each mark is drawn on paper, by hand. */
export function signOf(value: MarkValue): string {
  switch (value.kind) {
    case 'finger': return String(value.finger);
    case 'bow': return value.bow;
    case 'string': return ['I', 'II', 'III', 'IV'][value.string - 1]!;
    case 'reach': return value.reach;
    case 'text': return 'words';
    default: return value.kind;
  }
}

export const noteId = ({ part }: Awaited<ReturnType<Reader['part']>>, measure: string, nth: number): string => part.measures.find(({ number }) => number === measure)!.notes.filter(({ rest }) => !rest)[nth - 1]!.id;

/** The part's marks that stand, sorted. */
export async function standing(reader: Reader, part: string): Promise<string[]> {
  return (await reader.part(part)).state.ink.filter(({ superseded }) => superseded === null).map(({ mark: { note, value }, seats }) => JSON.stringify([note, value, seats])).sort();
}

/** Pencils, lays and inks in by keyboard alone. */
export async function decide(player: Player, reader: Reader, part: string, { measure, keys, why, marks }: Omit<Decision, 'work' | 'part'>, seats: 'all' | string[] = 'all'): Promise<void> {
  await player.stand(part);
  await player.goTo(measure);
  await player.press(...keys);
  await player.lay(why);
  await player.press('Enter');
  await player.slip(why).waitFor();
  await player.press('Enter');
  const view = await reader.part(part);
  const owed = marks.map(([note, value]) => JSON.stringify([noteId(view, measure, note), value, seats]));
  await expect.poll(() => standing(reader, part)).toEqual(expect.arrayContaining(owed));
}
