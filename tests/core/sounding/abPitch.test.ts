import { describe, expect, it } from 'vitest';
import { handFacts } from '../../../core/fingering/explain/handFacts.ts';
import { violin } from '../../../core/instruments/violin.ts';
import { renderSounding } from '../../../core/sounding/render.ts';
import { partOf } from '../../support/partBuilder.ts';
import { between, pitchTrack } from './pitchTrack.ts';
import { fingered, heardFrom } from './passage.ts';

const RATE = 22_050;
const part = partOf('{mf} {q=60} E4:1( G4:1 B4:1 A4:1 | D5:1 B4:1 E4:1) r:1');
const keys = [64, 67, 71, 69, 74];
const low = { m1n0: { string: 3, finger: 1 }, m1n1: { string: 3, finger: 3 }, m1n2: { string: 2, finger: 1 }, m1n3: { string: 2, finger: 0 }, m2n0: { string: 2, finger: 3 }, m2n1: { string: 2, finger: 1 }, m2n2: { string: 3, finger: 1 } } as const;
const high = { ...low, m1n2: { string: 3, finger: 3 }, m1n3: { string: 3, finger: 2 }, m2n0: { string: 3, finger: 3 }, m2n1: { string: 3, finger: 1 } } as const;

/** Onsets, by the metronome: the line begins 0.1 s into the sound. */
const onsets: Record<string, number> = { m1n0: 0.1, m1n1: 1.1, m1n2: 2.1, m1n3: 3.1, m2n0: 4.1, m2n1: 5.1, m2n2: 6.1 };

function heard(pins: typeof low | typeof high) {
  const { line, fingering } = fingered(part, pins);
  const told = handFacts({ instrument: violin, line }, fingering).steps.filter(({ slideAlone }) => slideAlone >= 0.5);
  return { told: told.map(({ note }) => note), moments: between(pitchTrack(renderSounding(heardFrom(part, pins), 'violin', RATE), RATE), keys) };
}

describe('two fingerings of one passage, heard one after the other', () => {
  it('have the pitch of a player who never leaves the notes where the explanation tells of no slide', () => {
    const { told, moments } = heard(low);
    expect(told).toEqual([]);
    // Frames that hold the end of one note and the beginning of the next find no true pitch.
    expect(moments.filter((at) => Object.values(onsets).every((onset) => Math.abs(at - onset) > 0.015))).toEqual([]);
  });

  it('differ where, and only where, the explanation tells of slides', () => {
    const { told, moments } = heard(high);
    expect(told.length).toBeGreaterThan(1);
    const slid = moments.filter((at) => Object.values(onsets).every((onset) => Math.abs(at - onset) > 0.015));
    for (const note of told) expect(slid.filter((at) => at < onsets[note]! && at > onsets[note]! - 0.2).length, note).toBeGreaterThan(2);
    expect(slid.filter((at) => !told.some((note) => at < onsets[note]! && at > onsets[note]! - 0.2))).toEqual([]);
  });
});
