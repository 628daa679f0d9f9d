import { describe, expect, it } from 'vitest';
import type { HairBow } from '../../../client/bowing/messages.ts';
import { hairSentences, shortSentence } from '../../../client/views/stand/hair/hairSentences.ts';
import { HEIGHT, hairShapes, type LineOfMusic } from '../../../client/views/stand/hair/hairShapes.ts';

const bow = (changes: Partial<HairBow>): HairBow => ({ notes: ['a'], measure: 1, direction: 'down', begins: 0, ends: 4, from: 0, to: 600, speed: 150, pace: 'usual', short: null, shared: false, marked: false, reason: '', ...changes });
const notes: Record<string, number> = { a: 0, b: 1, c: 4, d: 6 };
const line = (changes: Partial<LineOfMusic> = {}): LineOfMusic => ({ from: 0, to: 8, x: (second) => 10 * second, at: (note) => notes[note] ?? null, ...changes });

describe('the bow along the hair as shapes', () => {
  it('goes through its notes in time: a quarter of the bow is used after a quarter of its seconds', () => {
    const [drawn] = hairShapes([bow({ notes: ['a', 'b'] })], 600, line());
    expect(drawn!.points).toEqual([{ x: 0, y: 0 }, { x: 10, y: HEIGHT / 4 }, { x: 40, y: HEIGHT }]);
    expect(drawn!.ticks).toEqual([{ x: 10, y: HEIGHT / 4 }]);
  });

  it('is cut where the line of music ends, and goes on in the next where it was', () => {
    const bows = [bow({ begins: 0, ends: 8 })];
    const [above] = hairShapes(bows, 600, line({ to: 4 }));
    const [below] = hairShapes(bows, 600, line({ from: 4 }));
    expect([above!.points.at(-1)!.y, below!.points[0]!.y]).toEqual([HEIGHT / 2, HEIGHT / 2]);
    expect([above!.begins, below!.begins]).toEqual([true, false]);
  });

  it('bows outside the line are not drawn', () => expect(hairShapes([bow({}), bow({ begins: 8, ends: 9 })], 600, line({ from: 4 }))).toEqual([]));

  it('shows a lift where the hand places the bow anew, and none where it goes on from where it was', () => {
    const second = bow({ begins: 4, ends: 6, direction: 'up', from: 600, to: 0 });
    expect(hairShapes([bow({}), second], 600, line())[1]!.lift).toBeNull();
    expect(hairShapes([bow({}), { ...second, direction: 'down', from: 0, to: 600 }], 600, line())[1]!.lift).toEqual({ x0: 40, y0: HEIGHT, x1: 40, y1: 0 });
  });
});

describe('the bow along the hair in words', () => {
  const runs = bow({ measure: 9, short: { kind: 'runs-out', by: 65, fix: [] } });

  it('counts the bows, names the longest, and says that the hair lasts only where it does', () => {
    const bows = [bow({ from: 0, to: 200 }), bow({ measure: 3, from: 500, to: 100 })];
    expect(hairSentences(bows, bows, String).lead).toBe('Two bows; the longest, in measure 3, takes 400 mm of hair. The hair lasts everywhere.');
    expect(hairSentences([runs], [runs], String)).toMatchObject({ lead: 'One bow; the longest, in measure 9, takes 600 mm of hair.', short: [shortSentence(runs, [runs], String)] });
  });

  it('a bow that runs out says what is missing and what can be done', () => expect(shortSentence(runs, [runs], String)).toBe('The down-bow from measure 9 runs out: 65 mm of hair are missing. Split the slur, share out the changes, or play softer or faster.'));

  it('a bow at the wrong end names the measures whose bows would mend it, each once', () => {
    const bows = [bow({ measure: 1 }), bow({ measure: 1 }), bow({ measure: 2 }), bow({ measure: 3, short: { kind: 'wrong-end', by: 51, fix: [{ bow: 0, pace: 'slower' }, { bow: 1, pace: 'slower' }, { bow: 2, pace: 'faster' }, { bow: 3, pace: 'faster' }] } })];
    expect(shortSentence(bows[3]!, bows, String)).toBe('The down-bow from measure 3 begins at the wrong end: at the usual speed 51 mm of hair are missing. It lasts if the bows are drawn slower in measure 1 and faster in measures 2 to 3.');
  });

  it('without a bow says so', () => expect(hairSentences([], [], String).lead).toBe('Nothing is bowed in this line.'));
});
