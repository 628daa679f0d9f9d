import { describe, expect, it } from 'vitest';
import { offerFor } from '../../../../core/matching/editions/offerFor.ts';
import type { Part } from '../../../../core/music/part.ts';
import { readScore } from '../../../../core/musicxml/readScore.ts';
import { note, scoreText } from '../../../support/scoreText.ts';

const FIRST = [['C5', 'D5', 'E5', 'F#5'], ['G5', 'F#5', 'A5', 'B5'], ['E5', 'B5', 'C5', 'G5'], ['A5', 'D5', 'F#5', 'C5']];
const SECOND = [['A3', 'A3', 'B3', 'G3'], ['C4', 'B3', 'A3', 'D4'], ['G3', 'G3', 'C4', 'B3'], ['D4', 'A3', 'D4', 'G3']];

function partOf(measures: string[][], name: string, id = 'P1'): Part {
  const read = readScore(scoreText(measures.map((pitches) => pitches.map((pitch) => note(pitch, 4)).join('')), { name }).replaceAll('"P1"', `"${id}"`));
  if (!read.ok) throw new Error(read.fault.text);
  return read.score.parts[0]!;
}

const marked = (part: Part) => ({ part, marks: part.measures.flatMap(({ notes }) => notes.slice(1, 3)).map(({ id }) => ({ note: id, value: { kind: 'finger', finger: 2 } as const })) });
const set = { parts: [marked(partOf(FIRST, 'Violin I')), marked(partOf(SECOND, 'Violin II', 'P2'))] };
const placed = (part: Part, ids: readonly string[]) => part.measures.flatMap(({ ordinal, notes }) => notes.flatMap(({ id }, i) => (ids.includes(id) ? [`${ordinal}.${i}`] : [])));

describe('a kept set of marks', () => {
  it('is offered whole to the same music in another edition, whatever its part is called there', () => {
    const other = partOf(SECOND, 'Violino secondo', 'X9');
    const offer = offerFor(set, other)!;
    expect(offer.from).toBe(set.parts[1]);
    expect(offer.matched).toBe(1);
    expect(offer.lost).toEqual([]);
    expect(placed(other, offer.kept.map((mark) => mark.note))).toEqual(['1.1', '1.2', '2.1', '2.2', '3.1', '3.2', '4.1', '4.2']);
  });

  it('says how much of the music it knows, and keeps back what stands beside what it does not', () => {
    const cut = partOf([['D5', 'D5', 'A5', 'A5'], ...FIRST.slice(1)], 'Violin I');
    const offer = offerFor(set, cut)!;
    expect(offer.matched).toBe(13 / 16);
    expect(placed(cut, offer.kept.map((mark) => mark.note))).toEqual(['2.1', '2.2', '3.1', '3.2', '4.1', '4.2']);
    expect(offer.lost.map(({ measure }) => measure)).toEqual([1, 1]);
  });

  it('is not offered to an instrument it has nothing for', () => {
    expect(offerFor(set, partOf(FIRST, 'Viola'))).toBeNull();
  });
});
