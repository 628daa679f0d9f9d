import { describe, expect, it } from 'vitest';
import type { PartTally, PieceCheck } from '../../../core/agreement/wire/piece.ts';
import { pieceSentence } from '../../../client/views/folder/piece/pieceSentence.ts';
import { words } from '../../../client/words/words.ts';

const none: PieceCheck = { running: null, found: null, trouble: null };
const tally = (name: string, [cannotPlay, collides, worthALook]: [number, number, number], rested = 0): PartTally => ({ id: name, name, counts: { cannotPlay, collides, worthALook }, rested });
const found = (...parts: PartTally[]): PieceCheck => ({ ...none, found: { at: '2026-11-26T10:05:00', parts, before: [] } });

describe('a look through the whole piece, in a sentence', () => {
  it('says nothing before anybody looked', () => {
    expect(pieceSentence(none)).toBeNull();
  });

  it('names the part being read, or that it waits, whatever was found before', () => {
    const running = { done: 2, of: 5, reading: 'Viola', mine: true };
    expect(pieceSentence({ ...found(tally('Viola', [1, 0, 0])), running })).toBe('Viola is being read: part 3 of 5.');
    expect(pieceSentence({ ...none, running: { ...running, done: 0, reading: null } })).toBe('The piece waits for its turn.');
  });

  it('counts places in the parts that have any; what is put to rest is not among them', () => {
    expect(pieceSentence(found(tally('Violin I', [1, 2, 3]), tally('Viola', [0, 0, 0], 4), tally('Cello', [0, 0, 1])))).toBe('Seven places to watch in two parts.');
    expect(pieceSentence(found(tally('Viola', [0, 0, 0], 4)))).toBe('Nothing to watch in any part.');
  });

  it('says why the last one did not come to its end before what an earlier one found', () => {
    expect(pieceSentence({ ...found(tally('Viola', [1, 0, 0])), trouble: { code: 'TOO_BIG', text: 'Too big.' } })).toBe('Too big.');
  });

  it('tells the hour, and the day when it was another one', () => {
    const at = '2026-11-26T10:05:00';
    expect(words.piece.at(at, new Date('2026-11-26T20:00:00'))).toBe('Looked through at 10:05.');
    expect(words.piece.at(at, new Date('2026-11-27T08:00:00'))).toBe('Looked through on 26 November at 10:05.');
  });
});
