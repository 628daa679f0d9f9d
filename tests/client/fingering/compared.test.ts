import { describe, expect, it } from 'vitest';
import { bothMarks, settingsOf, toldIn } from '../../../client/views/stand/offers/compared.ts';
import { offersFor } from '../../../client/fingering/offersFor.ts';
import type { Offer, Question } from '../../../client/fingering/messages.ts';
import { partOf } from '../../support/partBuilder.ts';

const part = partOf('{q=60} D5:1( E5:1 F5:1 G5:1 | A5:2 F5:1 D5:1) |');
const ids = part.measures.flatMap(({ notes }) => notes.map(({ id }) => id));
const question: Question = { from: ids[0]!, to: ids.at(-1)!, aim: 'usual', pencilled: [], standing: [], openStrings: 'free', hand: null, players: 8, assumedTempo: 90, language: 'en' };

describe('two fingerings about one staff', () => {
  const { offers, pairs } = offersFor(part, question);
  const [above, below] = [offers[0]!, offers[1]!];
  const shown = ({ marks }: Offer, seats: 'all' | readonly string[]) => marks.map(({ note, value }) => ({ note, value, seats: seats as 'all', state: 'proposed' as const }));

  it('have all figures of the first above, and below only what the second says otherwise', () => {
    const marks = bothMarks(shown, above, below);
    const over = marks.filter(({ seats }) => seats === 'all');
    const under = marks.filter(({ seats }) => seats !== 'all');
    const named = ({ note, value }: { note: string; value: object }): string => note + JSON.stringify(value);
    expect(over.map(named)).toEqual(above.marks.map(named));
    expect(under.map(named)).toEqual(below.marks.map(named).filter((one) => !above.marks.map(named).includes(one)));
  });

  it('stand on one scale that holds both, with the same notes ruled', () => {
    const [one, other] = settingsOf(above, below, pairs[0]!);
    expect(one.range).toEqual(other.range);
    for (const { low, high } of [...above.path, ...below.path]) {
      expect(low).toBeGreaterThanOrEqual(one.range![0]);
      expect(high).toBeLessThanOrEqual(one.range![1]);
    }
    expect([...one.differs!]).toEqual(pairs[0]!.differs);
    expect(one.told).toEqual(toldIn(above));
  });
});
