import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { difference, measuresOf } from '../../../core/agreement/difference.ts';
import { inForce, type MarkInForce } from '../../../core/agreement/inForce.ts';
import { conversations } from './arbitraries.ts';
import { Conversation, FACTS } from './section.ts';

const finger = (note: string, finger: 1 | 2 | 3 | 4, seats: MarkInForce['seats'] = 'all'): MarkInForce => ({ note, value: { kind: 'finger', finger }, seats });
const bow = (note: string): MarkInForce => ({ note, value: { kind: 'bow', bow: 'up' }, seats: 'all' });
const told = (before: MarkInForce[], after: MarkInForce[]) => difference(before, after, FACTS).map(({ measure, kind, seats }) => [measure, kind, seats]);

describe('what differs between two revisions', () => {
  it('is what was added, rubbed out and changed, in the order of the music', () => {
    expect(told([finger('m3n0', 1), finger('m1n1', 1)], [finger('m3n0', 2), bow('m1n0')])).toEqual([
      [1, 'added', 'all'],
      [1, 'rubbedOut', 'all'],
      [3, 'changed', 'all'],
    ]);
  });

  it('names the seats it is different for, and no others', () => {
    expect(told([finger('m1n0', 1)], [finger('m1n0', 1, ['1i', '2o', '2i', '3o']), finger('m1n0', 2, ['1o'])])).toEqual([[1, 'changed', ['1o']]]);
  });

  it('tells a fingering and a bow on one note apart', () => {
    expect(told([finger('m1n0', 1)], [bow('m1n0')])).toEqual([
      [1, 'added', 'all'],
      [1, 'rubbedOut', 'all'],
    ]);
  });

  it('has nothing on notes that are gone', () => {
    expect(told([], [finger('gone', 1)])).toEqual([]);
  });

  it('is nothing between equal sets, and the other way round where the sets are exchanged', () => {
    const other = { added: 'rubbedOut', rubbedOut: 'added', changed: 'changed' } as const;
    fc.assert(
      fc.property(conversations, conversations, (one, two) => {
        const [before, after] = [one, two].map((said) => {
          const talk = new Conversation();
          for (const { by, name, input } of said) talk.hear(by, name, input);
          return inForce(talk.state, FACTS.seats);
        });
        expect(difference(before!, before!, FACTS)).toEqual([]);
        const key = (change: ReturnType<typeof difference>[number]) => JSON.stringify([change.note, change.before, change.after, change.seats, change.kind]);
        const back = difference(after!, before!, FACTS).map((change) => ({ ...change, before: change.after, after: change.before, kind: other[change.kind] }));
        expect(back.map(key).sort()).toEqual(difference(before!, after!, FACTS).map(key).sort());
      }),
      { numRuns: 60 },
    );
  });

  it('lies in measures, each named once', () => {
    expect(measuresOf(difference([], [finger('m2n0', 1), finger('m2n1', 1), finger('m1n0', 1)], FACTS))).toEqual([1, 2]);
  });
});
