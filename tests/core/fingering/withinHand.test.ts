import { describe, expect, it } from 'vitest';
import { handFacts } from '../../../core/fingering/explain/handFacts.ts';
import { withinHand } from '../../../core/fingering/explain/withinHand.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import type { Pin } from '../../../core/fingering/pin.ts';
import { HAND_IN_ENGLISH } from '../../../core/fingering/words/english.ts';
import { withinHandWords } from '../../../core/fingering/words/withinHandWords.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { eighths } from './lines.ts';

const instrument = instrumentNamed('violin');
const TEMPO = 60;
const SHORT = { factor: 0.85, shortFourth: true };

/** The section's own fingering of a line, settled note by note. */
function sectionPlays(pitches: number[], fingers: [finger: 0 | 1 | 2 | 3 | 4, string: number, position: number][]) {
  const line = eighths(pitches, 'violin', TEMPO);
  const pins = new Map<string, Pin>(fingers.map(([finger, string, position], i) => [line[i]!.id, finger === 0 ? { finger, string } : { finger, string, position }]));
  return { line, fingering: fingerLine(instrument, line, TEMPO, { pins, best: 1 }).fingerings[0]! };
}

const shiftsOf = (line: ReturnType<typeof eighths>, fingering: Parameters<typeof handFacts>[1]): string[] => handFacts({ instrument, line }, fingering).steps.filter(({ shifts }) => shifts).map(({ note }) => note);

describe('a fingering beyond a hand', () => {
  // B flat to F sharp with 1 and 4 in first position: an augmented fifth.
  const wide = sectionPlays([69, 70, 78, 76, 81, 83], [[0, 2, 1], [1, 2, 1], [4, 2, 1], [0, 1, 1], [1, 1, 3], [2, 1, 3]]);

  it('is answered by one within it that keeps the shifts of the section between the same notes', () => {
    const instead = withinHand(instrument, wide.line, TEMPO, wide.fingering, { hand: SHORT })!;
    expect(instead.beyond.map(({ notes }) => notes)).toEqual([['n1', 'n2']]);
    expect(handFacts({ instrument, line: wide.line, hand: SHORT }, instead.fingering).steps.filter(({ stretch }) => stretch?.zone === 'exceptional')).toEqual([]);
    expect(instead.lost).toEqual([]);
    expect(shiftsOf(wide.line, instead.fingering)).toEqual(expect.arrayContaining(shiftsOf(wide.line, wide.fingering)));
  });

  it('says what is too wide, what is played instead, and gives the caution without a clearance', () => {
    const instead = withinHand(instrument, wide.line, TEMPO, wide.fingering, { hand: SHORT })!;
    const sentences = withinHandWords(HAND_IN_ENGLISH, { instrument, line: wide.line, hand: SHORT }, wide.fingering, instead);
    expect(sentences[0]).toMatch(/^For this hand the stretch 1-4 of \d+ mm to the F sharp is too wide\.$/);
    expect(sentences).toContain('Every shift stays where the section has it.');
    expect(sentences.at(-1)).toMatch(/^This passage asks a wider stretch .* see a licensed clinician\.$/);
    expect(sentences.join(' ')).not.toMatch(/safe|undefined|harmless/);
  });

  it('gives up the one shift that leads into the stretch, names it, and keeps the other', () => {
    const from = sectionPlays([76, 70, 78, 76, 74], [[3, 2, 3], [1, 2, 1], [4, 2, 1], [3, 2, 3], [2, 2, 3]]);
    const hand = SHORT;
    const instead = withinHand(instrument, from.line, TEMPO, from.fingering, { hand })!;
    expect(shiftsOf(from.line, from.fingering)).toEqual(['n1', 'n3']);
    expect(instead.lost).toEqual(['n1']);
    expect(instead.kept).toEqual(['n3']);
    expect(instead.stillBeyond).toEqual([]);
    expect(withinHandWords(HAND_IN_ENGLISH, { instrument, line: from.line, hand }, from.fingering, instead).join(' ')).toMatch(/cannot be kept; ask the principal/);
  });

  it('within the hand is left as it is', () => {
    const plain = sectionPlays([69, 71, 72, 74], [[0, 2, 1], [1, 2, 1], [2, 2, 1], [3, 2, 1]]);
    expect(withinHand(instrument, plain.line, TEMPO, plain.fingering, { hand: SHORT })).toBeNull();
  });

  it('whose own marks leave no other way is said to be beyond the hand still', () => {
    const pins = new Map<string, Pin>([['n1', { finger: 1, string: 2, position: 1 }], ['n2', { finger: 4, string: 2, position: 1 }]]);
    const instead = withinHand(instrument, wide.line, TEMPO, wide.fingering, { hand: SHORT, pins })!;
    expect(instead.stillBeyond.map(({ notes }) => notes)).toContainEqual(['n1', 'n2']);
  });
});
