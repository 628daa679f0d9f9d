import { describe, expect, it } from 'vitest';
import { offerOn } from '../../../core/archive/offer.ts';
import type { KeptPart } from '../../../core/archive/keptSet.ts';
import { factsOf } from '../../../core/agreement/facts.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';
import { Conversation, id, PRINCIPAL } from '../agreement/section.ts';

const MUSIC = 'D5:1 E5:1 F5:1 G5:1 | A5:1 C5:1 B4:1 D5:1 | E5:2 C5:2 | G4:1 A4:1 F4:1 E4:1';
const seats = seatsFor(4);
const named = (text: string, name: string) => ({ ...partOf(text), name });

/** A finger on the first note of each measure: for all, and in measure 3 for one seat. */
function kept(text = MUSIC, name = 'Violin I'): KeptPart {
  const content = named(text, name);
  const talk = new Conversation(factsOf(content, seats));
  const marks: Mark[] = [1, 2, 3, 4].map((measure) => ({ note: `m${measure}n0`, value: { kind: 'finger', finger: 1 }, ...(measure === 3 ? { seats: ['2i'] } : {}) }));
  expect(talk.say(PRINCIPAL, 'propose', { id: id(1), from: 1, to: 4, seats: 'all', why: 'So', marks })).toBe('written');
  expect(talk.say(PRINCIPAL, 'adopt', { proposal: id(1), revision: 1 })).toBe('written');
  return { content, section: 'First violins', seats, log: talk.log };
}

const offered = (text: string, players = 4) => {
  const part = named(text, 'Violin I');
  const { marks, left } = offerOn([kept()], part, factsOf(part, seatsFor(players)))!;
  return { notes: marks.map(({ note, seats: whose }) => [note, whose ?? 'all']), left };
};

describe('marks of an earlier season on another edition', () => {
  it('are all there where the edition is the same', () => {
    expect(offered(MUSIC)).toEqual({ notes: [['m1n0', 'all'], ['m2n0', 'all'], ['m3n0', ['2i']], ['m4n0', 'all']], left: 0 });
  });

  it('go where the music is, and are left where it is not', () => {
    const { notes, left } = offered(`C4:4 | ${MUSIC.replace('A5:1 C5:1 B4:1 D5:1', 'B5:1 B5:1 B4:1 C5:1')}`);
    expect(notes.map(([note]) => note)).toContain('m5n0');
    expect(notes.map(([note]) => note)).not.toContain('m3n0');
    expect(notes.length + left).toBe(4);
  });

  it('for a seat that is not here any more are left', () => {
    expect(offered(MUSIC, 2)).toEqual({ notes: [['m1n0', 'all'], ['m2n0', 'all'], ['m4n0', 'all']], left: 1 });
  });
});

describe('the kept part a part is', () => {
  const others = [kept('C3:4 | C3:4 | C3:4 | C3:4', 'Violin II'), kept(MUSIC, 'Violin I')];
  const notes = (text: string, name: string, instrument: 'violin' | 'viola' = 'violin') => {
    const part = { ...named(text, name), instrument };
    return offerOn(others, part, factsOf(part, seats))?.marks.length ?? null;
  };

  it('is found by its music where it goes by another name', () => {
    expect(notes(MUSIC, 'Violino primo')).toBe(4);
    expect(notes(MUSIC, 'Violin I')).toBe(4);
  });

  it('is none where neither name nor music is here, or the instrument is another', () => {
    expect(notes('B3:4 | A3:4 | B3:4 | A3:4', 'Violino terzo')).toBeNull();
    expect(notes(MUSIC, 'Violin I', 'viola')).toBeNull();
  });
});
