import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partBowings, type PlainBowing } from '../../../../core/bowing/direction/partBowings.ts';
import { checkPart } from '../../../../core/check/checkPart.ts';
import { seatMarks } from '../../../../core/check/seatMarks.ts';
import { CheckSettings } from '../../../../core/check/settings.ts';
import { instrumentNamed } from '../../../../core/instruments/instrumentNamed.ts';
import type { Mark } from '../../../../core/music/mark.ts';
import { seatsFor } from '../../../../core/music/seat.ts';
import { tempoMap } from '../../../../core/music/seconds.ts';
import { inTime } from './bowed.ts';

type Heard = ReturnType<typeof inTime>;

function bowed(part: Heard, best = 1): PlainBowing[] {
  const { bowSeconds } = CheckSettings.parse({});
  return partBowings({ part, instrument: instrumentNamed('violin'), tempo: tempoMap(part, 90), signsOn: seatMarks(part, [], []).forAll, table: bowSeconds, assumedDynamic: 'mf', measures: { from: 1, to: part.measures.length }, best });
}

const ways = (music: string): string[] => bowed(inTime('4/4', music)).map(({ strokes }) => strokes.map(({ direction }) => direction[0]).join(' '));

describe('voices of one part', () => {
  it.each([
    ['go one way where they move together', 'D5:1 E5:2 F5:1 && D4:1 r:1 E4:1 F4:1', ['d u d', 'd u d']],
    ['where that voice is alone, its phrase after the rest begins down', 'D4:1 r:1 E4:1 F4:1', ['d d u']],
    ['follow a sign of either of them', 'D5:1 E5:1 F5:1 G5:1 && D4:1<up> E4:1 F4:1 G4:1', ['u d u d', 'u d u d']],
    ['are left alone where their rhythms differ', 'D5:2 E5:2 && r:1 D4:1 E4:1 F4:1', ['d u', 'u d u']],
    ['keep signs that go against each other', 'D5:1<up> E5:1 && D4:1<down> E4:1', ['u d', 'd d']],
  ])('%s', (_, music, expected) => {
    expect(ways(music)).toEqual(expected);
  });

  it('say why: the other voice goes this way', () => {
    const lower = bowed(inTime('4/4', 'D5:4 && D4:4'))[1]!;
    expect(lower.strokes[0]!.reason).toBe('The other voice that moves with it goes this way.');
  });

  it('bowed by the engine and every bow signed are not said to be bowed against each other', () => {
    const line = fc.array(fc.tuple(fc.constantFrom('D', 'E', 'r'), fc.constantFrom('1/3', '1/2', '1', '2'), fc.constantFrom('', '', "'")), { minLength: 1, maxLength: 8 });
    const written = (octave: number) => ([step, length, tail]: [string, string, string]) => (step === 'r' ? `r:${length}` : `${step}${octave}:${length}${tail}`);
    let met = 0;
    fc.assert(fc.property(line, line, (upper, lower) => {
      const part = inTime('4/4', `${upper.map(written(5)).join(' ')} && ${lower.map(written(4)).join(' ')}`);
      const voices = bowed(part);
      const marks = voices.flatMap(({ strokes }) => strokes.map(({ notes, direction }): Mark => ({ note: notes[0]!, value: { kind: 'bow', bow: direction } })));
      met += voices.length === 2 ? 1 : 0;
      const found = checkPart({ part: { ...part, instrument: 'violin' }, seats: seatsFor(2), marks, settings: {} });
      expect(found.filter(({ rule }) => rule === 'parts/divided-bowed-against')).toEqual([]);
    }), { numRuns: 200 });
    expect(met).toBeGreaterThan(100);
  });
});
