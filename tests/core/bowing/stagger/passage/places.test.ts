import { describe, expect, it } from 'vitest';
import { peakWeights } from '../../../../../core/bowing/stagger/passage/peak.ts';
import { placesIn } from '../../../../../core/bowing/stagger/passage/places.ts';
import { swellsOf } from '../../../../../core/bowing/direction/swells.ts';
import type { Part } from '../../../../../core/music/part.ts';
import { partOf } from '../../../../support/partBuilder.ts';
import { voicesIn } from '../../bowing.ts';

const timed = (music: string, beats = '4', beatType = '4'): Part => {
  const part = partOf(music);
  return { ...part, measures: part.measures.map((measure) => ({ ...measure, time: { beats, beatType } })) };
};
const placesOf = (part: Part) => {
  const voice = voicesIn(part)[0]!;
  return placesIn(voice, { voice: 0, from: 0, to: voice.length - 1 }, part.measures);
};
const asText = (part: Part) => placesOf(part).map(({ note, after }) => `${note}+${after}`);

describe('places where a bow may change', () => {
  it('lie on the parts of the beat inside a held note, a part away from its ends', () => {
    expect(asText(timed('{q=120} G3:4'))).toEqual(['1/2', 1, '3/2', 2, '5/2', 3, '7/2'].map((after) => `m1n0+${after}`));
  });

  it('lie closer the slower the beat, never under a fifth of a second', () => {
    const gaps = (tempo: number) => placesOf(timed(`{q=${tempo}} G3:4`)).slice(1).map(({ second }, i, all) => second - (all[i - 1]?.second ?? 0)).slice(1);
    for (const tempo of [30, 45, 60, 76, 100, 144]) for (const gap of gaps(tempo)) expect([gap >= 0.2 - 1e-9, gap < 0.4 + 1e-9]).toEqual([true, true]);
  });

  it('lie on thirds of the beat in compound time', () => {
    expect(asText(timed('{q=150} G3:3', '6', '8'))).toEqual(['1/2', 1, '3/2', 2, '5/2'].map((after) => `m1n0+${after}`));
  });

  it('are where the notes begin, and not inside short ones', () => {
    expect(asText(timed('{q=60} D5:1/2( E5:1/2 F5:1/2 G5:1/2 A5:2)'))).toEqual(['m1n1+0', 'm1n2+0', 'm1n3+0', 'm1n4+0', ...['1/4', '1/2', '3/4', 1, '5/4', '3/2', '7/4'].map((after) => `m1n4+${after}`)]);
  });

  it('tell barline, beat and what lies between', () => {
    const places = placesOf(timed('{q=120} G3:4~ | G3:4'));
    expect(places.filter(({ onBarline }) => onBarline).map(({ note, after }) => [note, after])).toEqual([['m2n0', 0]]);
    expect(places.filter(({ onBeat }) => onBeat).map(({ second }) => second)).toEqual([0.5, 1, 1.5, 2, 2.5, 3, 3.5]);
  });

  it('count the beats of a pick-up from the barline it leads to', () => {
    const places = placesOf(timed('{q=60} G3:3/2~ | G3:4'));
    expect(places.filter(({ measure, onBeat }) => measure === 1 && onBeat).map(({ at }) => at)).toEqual([0.5]);
  });

  it('pass over grace notes and follow the tempo', () => {
    const places = placesOf(timed('{q=60} D5:2( ^E5:0 {q=120} F5:2)'));
    expect(places.filter(({ after }) => after === 0).map(({ note }) => note)).toEqual(['m1n2']);
    expect(places.at(-1)!.second).toBeCloseTo(2.75, 9);
  });
});

describe('the peak of a passage', () => {
  const weights = (part: Part) => {
    const voice = voicesIn(part)[0]!;
    const stretch = { voice: 0, from: 0, to: voice.length - 1 };
    const places = placesIn(voice, stretch, part.measures);
    return new Map(peakWeights(voice, stretch, places, swellsOf(part), 'mf').map((weight, i) => [places[i]!.second, Number(weight.toFixed(3))]));
  };

  it('is nowhere while nothing changes', () => {
    expect([...weights(timed('{p} {q=60} G3:4~ | G3:4')).values()].every((weight) => weight === 0)).toBe(true);
  });

  it('lies at the turn of the hairpins and fades over a second', () => {
    const part = timed('{p} {q=60} G3:4~ | G3:4');
    part.measures[0]!.wedges.push({ type: 'crescendo', at: 0 });
    part.measures[1]!.wedges.push({ type: 'diminuendo', at: 0 }, { type: 'stop', at: 3 });
    const found = weights(part);
    expect([found.get(4), found.get(3.5), found.get(4.25), found.get(2.75), found.get(5.25)]).toEqual([1, 0.5, 0.75, 0, 0]);
  });

  it('lasts as long as the loudest dynamic', () => {
    const found = weights(timed('{p} {q=60} D5:4( | {f} E5:2 F5:2 | {p} G5:4)'));
    expect([found.get(3.5), found.get(4), found.get(5), found.get(6), found.get(8.5)]).toEqual([0.5, 1, 1, 1, 0.25]);
  });
});
