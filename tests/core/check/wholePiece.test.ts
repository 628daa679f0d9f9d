import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../core/check/checkPart.ts';
import { wholePiece, type PieceVoice } from '../../../core/check/wholePiece.ts';
import type { Mark } from '../../../core/music/mark.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';

const bow = (way: 'up' | 'down'): Mark => ({ note: 'm1n0', value: { kind: 'bow', bow: way }, seats: 'all' });
const voice = (name: string, music: string, marks: Mark[], settings = {}): PieceVoice => ({ id: name, name, part: partOf(music), seats: seatsFor(4), marks, settings });
const voices = [
  voice('Violin I', '{q=60} D5:1 E5:1 F5:1 G5:1 | A5:1 G5:1 F5:2', [bow('down')]),
  voice('Violin II', '{q=60} D4:1 E4:1 F4:1 G4:1 | A4:1 G4:1 F4:2', [bow('up')]),
  voice('Viola', '{q=20} {pp} D4:4( | E4:4 | F4:4 | G4:4)', []),
];

describe('a whole piece', () => {
  it('is every part beside all the others, in their order, as each would be found alone', () => {
    const all = voices.map(({ name, part, marks, seats }) => ({ section: name, part, marks, seats }));
    const alone = voices.map((one, i) => ({ id: one.id, findings: checkPart({ ...one, others: all.filter((_, other) => other !== i) }) }));
    expect([...wholePiece(voices)]).toEqual(alone);
  });

  it('names in both parts where two sections in unison bow against each other', () => {
    const [first, second] = [...wholePiece(voices)];
    expect(first!.findings.find(({ rule }) => rule === 'section/unison-bowed-against')?.text).toContain('up in Violin II');
    expect(second!.findings.find(({ rule }) => rule === 'section/unison-bowed-against')?.text).toContain('down in Violin I');
  });

  it('reads each part by what its own section has settled', () => {
    const found = (settings: object) => [...wholePiece([...voices.slice(0, 2), voice('Viola', '{q=20} {pp} D4:4( | E4:4 | F4:4 | G4:4)', [], settings)])][2]!.findings.filter(({ rule }) => rule === 'bow/outlasts-bow').length;
    expect(found({})).toBeGreaterThan(0);
    expect(found({ bowSeconds: { pp: 60, p: 60, mp: 60, mf: 60, f: 60, ff: 60 } })).toBe(0);
  });

  it('reads a part only when its answer is asked for', () => {
    const broken = { ...voices[1]!, settings: { unisonNotes: 'many' } };
    const reading = wholePiece([voices[0]!, broken]);
    expect(reading.next().value).toMatchObject({ id: 'Violin I' });
    expect(() => reading.next()).toThrow();
  });
});
