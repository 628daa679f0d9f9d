import { describe, expect, it } from 'vitest';
import { hairFor } from '../../../client/bowing/hairFor.ts';
import type { HairQuestion } from '../../../client/bowing/messages.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';

const question = (changes: Partial<HairQuestion> = {}): HairQuestion => ({ marks: [], seats: seatsFor(2), seat: 'all', settings: {}, ...changes });
const LONG = partOf('{pp} {q=60} G3:4~ | G3:4~ | G3:4~ | G3:4');
const change = (note: string, seats: Mark['seats']): Mark => ({ note, value: { kind: 'change', after: 0 }, ...(seats ? { seats } : {}) });

describe('the bow along the hair, for the page', () => {
  it('says when each bow begins and ends and where each measure does', () => {
    const { voices, barlines, end, hair } = hairFor(partOf('{mf} {q=60} D5:2 E5:2 | F5:4'), question());
    expect(voices[0]!.map(({ begins, ends, direction }) => [begins, ends, direction])).toEqual([[0, 2, 'down'], [2, 4, 'up'], [4, 8, 'down']]);
    expect([barlines, end, hair]).toEqual([[{ ordinal: 1, second: 0 }, { ordinal: 2, second: 4 }], 8, 650]);
  });

  it('a bow longer than the section lets one last runs out by the share that is over', () => {
    const { voices } = hairFor(LONG, question({ settings: { bowSeconds: { pp: 12 } } }));
    // 16 s of 12 s want 4/3 of 650 mm; nine tenths of the hair are drawn.
    expect(voices[0]![0]!.short).toEqual({ kind: 'runs-out', by: Math.round((16 / 12) * 650 - 0.9 * 650), fix: [] });
  });

  it('read for one seat, keeps to that seat’s own changes', () => {
    const marks = [change('m3n0', ['1o'])];
    expect(hairFor(LONG, question({ marks, seat: '1o' })).voices[0]!.map(({ begins, ends, short }) => [begins, ends, short])).toEqual([[0, 8, null], [8, 16, null]]);
    expect(hairFor(LONG, question({ marks, seat: '1i' })).voices[0]).toHaveLength(1);
  });

  it('read for everybody, a bow is not short where every seat changes inside it, and is where one does not', () => {
    const of = (marks: Mark[]) => hairFor(LONG, question({ marks })).voices[0]!.map(({ shared, short }) => [shared, short?.kind ?? null]);
    expect(of([change('m2n0', ['1o']), change('m3n0', ['1i'])])).toEqual([[true, null]]);
    expect(of([change('m2n0', ['1o'])])).toEqual([[false, 'runs-out']]);
  });

  it('a section’s slower table leaves more hair', () => {
    const used = (mf: number) => { const [bow] = hairFor(partOf('{mf} {q=60} D5:2'), question({ settings: { bowSeconds: { mf } } })).voices[0]!; return Math.abs(bow!.to - bow!.from); };
    expect(used(8)).toBeLessThan(used(4));
  });
});
