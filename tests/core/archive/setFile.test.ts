import { describe, expect, it } from 'vitest';
import { isAlike, musicPrints, shareOf } from '../../../core/archive/alike.ts';
import { fromSetFile, withKeptIds } from '../../../core/archive/fromSetFile.ts';
import { keptMarks, type KeptSet } from '../../../core/archive/keptSet.ts';
import { SetFile } from '../../../core/archive/setFile.ts';
import { toSetFile } from '../../../core/archive/toSetFile.ts';
import { factsOf } from '../../../core/agreement/facts.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { smallPart } from '../../support/smallPart.ts';
import { Conversation, id, PARTNER, PRINCIPAL } from '../agreement/section.ts';

/** A part whose ids are those of an older edition, with a finger for all and another for one seat. */
function kept(): KeptSet {
  const read = smallPart();
  const content = withKeptIds(read, read.measures.map(({ notes }) => notes.map((note) => `old-${note.id}`)))!;
  const seats = seatsFor(4);
  const talk = new Conversation(factsOf(content, seats));
  const finger = (n: 1 | 2, seat?: string[]) => ({ note: 'old-P1n5', value: { kind: 'finger' as const, finger: n }, ...(seat ? { seats: seat } : {}) });
  for (const [n, by, mark] of [[1, PARTNER, finger(1)], [2, PRINCIPAL, finger(2, ['2o'])]] as const) {
    expect(talk.say(by, 'propose', { id: id(n), from: 2, to: 2, seats: 'all', why: `why ${n}`, marks: [mark] })).toBe('written');
    expect(talk.say(PRINCIPAL, 'adopt', { proposal: id(n), revision: 1 })).toBe('written');
  }
  const parts = [{ content, section: 'First violins', seats, log: talk.log }];
  return { id: id(9), title: 'Spring', composer: 'T. Holmwood', ensemble: 'Town players', conductor: 'R. Vane', season: '2026/27', bytes: new Uint8Array([1]), fileName: 'spring.musicxml', keptBy: 'Lena', keptAt: '2026-11-26T10:00:00.000Z', parts };
}

describe('a set of marks as a file', () => {
  it('read back with its document it is the same set', () => {
    const set = kept();
    const file = SetFile.parse(JSON.parse(JSON.stringify(toSetFile(set, false))));
    expect(fromSetFile(file, [smallPart()], set.bytes)).toEqual({ ok: true, set });
  });

  it('says of every mark that stands where, for whom, by whom, when and why', () => {
    const seats = ['1o', '1i', '2i'];
    expect(toSetFile(kept(), false).parts[0]!.marks).toEqual([
      { note: 'old-P1n5', measure: 2, number: '1', value: { kind: 'finger', finger: 1 }, seats, by: 'Runa', at: '2026-11-25T10:00:02.000Z', why: 'why 1' },
      { note: 'old-P1n5', measure: 2, number: '1', value: { kind: 'finger', finger: 2 }, seats: ['2o'], by: 'Runa', at: '2026-11-25T10:00:04.000Z', why: 'why 2' },
    ]);
  });

  it.each<[string, (file: SetFile) => void]>([
    ['a mark that the log does not build', (file) => file.parts[0]!.marks.pop()],
    ['a row missing in the log', (file) => file.parts[0]!.log.splice(1, 1)],
    ['a note the document does not have', (file) => file.parts[0]!.notes[0]!.push('more')],
    ['an id given twice', (file) => (file.parts[0]!.notes[0]![0] = 'old-P1n5')],
    ['a part the document does not have', (file) => (file.parts[0]!.id = 'P7')],
    ['an event nobody knows', (file) => (file.parts[0]!.log[0]!.events = [{ type: 'sung' }])],
  ])('with %s it is refused by the name of the part', (_, spoil) => {
    const file = toSetFile(kept(), false);
    spoil(file);
    expect(fromSetFile(file, [smallPart()], new Uint8Array())).toEqual({ ok: false, part: 'Violin I' });
  });

  it('marks on notes that are gone are not among those kept', () => {
    const [part] = kept().parts;
    const shorter = { ...part!, content: { ...part!.content, measures: part!.content.measures.slice(0, 1) } };
    expect(keptMarks(shorter)).toEqual([]);
  });
});

describe('the same work again', () => {
  it.each<[string, string, string, string, boolean]>([
    ['Sérénade, op. 22', 'A. Holmwood', 'SERENADE op 22: I. Moderato', 'Holmwood', true],
    ['Spring', '', 'spring', 'T. Holmwood', true],
    ['Spring', 'T. Holmwood', 'Spring', 'R. Ashgrove', false],
    ['Spring', 'T. Holmwood', 'Springtime', 'T. Holmwood', false],
    ['', '', '', '', false],
  ])('%s by "%s" and %s by "%s": %s', (title, composer, other, by, alike) => {
    expect(isAlike({ title, composer }, { title: other, composer: by })).toBe(alike);
    expect(isAlike({ title: other, composer: by }, { title, composer })).toBe(alike);
  });

  it('is known by its music whatever its ids, and other music is not', () => {
    const part = smallPart();
    const renamed = withKeptIds(part, part.measures.map(({ notes }) => notes.map(({ id: name }) => `x${name}`)))!;
    expect(shareOf(musicPrints(part), musicPrints(renamed))).toBe(1);
    const higher = { ...part, measures: part.measures.map((measure) => ({ ...measure, notes: measure.notes.map((note) => ({ ...note, midi: 71 })) })) };
    expect(shareOf(musicPrints(part), musicPrints(higher))).toBe(0);
    expect(shareOf([], musicPrints(part))).toBe(0);
  });
});
