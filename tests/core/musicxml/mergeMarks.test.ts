import { describe, expect, it } from 'vitest';
import type { MarkValue } from '../../../core/music/mark.ts';
import type { Part } from '../../../core/music/part.ts';
import { mergeMarks } from '../../../core/musicxml/mergeMarks.ts';
import { readMarks } from '../../../core/musicxml/readMarks.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { note, scoreText } from '../../support/scoreText.ts';

const slur = (type: 'start' | 'stop') => `<notations><slur type="${type}" number="1"/></notations>`;
const printed = (inner: string) => `<notations><technical>${inner}</technical></notations>`;

function part(text: string): Part {
  const read = readScore(text);
  if (!read.ok) throw new Error(read.fault.text);
  return read.score.parts[0]!;
}

function merged(text: string, marks: [number, MarkValue][], superseded: 'keep' | 'hide' = 'keep', expressible = (_: string) => true): string {
  const notes = part(text).measures.flatMap((measure) => measure.notes);
  const made = mergeMarks(text, { parts: [{ part: 'P1', marks: marks.map(([index, value]) => ({ note: notes[index]!.id, value })) }], superseded, expressible });
  if (!made.ok) throw new Error(made.fault.text);
  return made.text;
}

const shown = (text: string) => part(text).measures.flatMap(({ notes }) => notes.map(({ technical }) => readMarks(technical).map(({ value }) => value)));
/** Slurs by the count of their first and last note in the part. */
function slurs(text: string): [number, number][] {
  const { measures, slurs: pairs } = part(text);
  const ids = measures.flatMap(({ notes }) => notes.map(({ id }) => id));
  return pairs.map(({ from, to }) => [ids.indexOf(from), ids.indexOf(to)]);
}

const legato = scoreText([['C5', 'D5', 'E5', 'F5'].map((pitch, i) => note(pitch, 4, i === 0 ? slur('start') : i === 3 ? slur('stop') : '')).join('')]);

describe('a printed mark under a new one', () => {
  const text = scoreText([note('C5', 16, printed('<down-bow/><fingering>2</fingering>'))]);

  it('is kept beside it when asked to keep', () => {
    expect(shown(merged(text, [[0, { kind: 'bow', bow: 'up' }]]))).toEqual([[{ kind: 'bow', bow: 'down' }, { kind: 'finger', finger: 2 }, { kind: 'bow', bow: 'up' }]]);
  });

  it('stays in the document unseen when asked to hide, and no other mark of the note is touched', () => {
    const hidden = merged(text, [[0, { kind: 'bow', bow: 'up' }]], 'hide');
    expect(shown(hidden)).toEqual([[{ kind: 'finger', finger: 2 }, { kind: 'bow', bow: 'up' }]]);
    expect(hidden).toContain('<notations print-object="no"><other-notation type="single" print-object="no">&lt;down-bow/&gt;</other-notation></notations>');
    expect(hidden).not.toContain('<down-bow/>');
  });

  it('that says the same is not written twice', () => {
    expect(merged(text, [[0, { kind: 'bow', bow: 'down' }]], 'hide')).toBe(text);
  });

  it('is hidden by rubbing out', () => {
    expect(shown(merged(text, [[0, { kind: 'none', slot: 'finger' }]], 'hide'))).toEqual([[{ kind: 'bow', bow: 'down' }]]);
  });

  it('of several bow changes on a long note, only the one at the same time is superseded', () => {
    const text = merged(scoreText([note('C5', 16)]), [[0, { kind: 'change', after: 0 }], [0, { kind: 'change', after: '3/2' }]]);
    expect(shown(merged(text, [[0, { kind: 'change', after: 1 }], [0, { kind: 'change', after: 0 }]], 'hide'))).toEqual([[{ kind: 'change', after: 0 }, { kind: 'change', after: '3/2' }, { kind: 'change', after: 1 }]]);
    expect(shown(merged(text, [[0, { kind: 'none', slot: 'change' }]], 'hide'))).toEqual([[]]);
  });

  it('can be hidden when it is the only one there', () => {
    expect(shown(merged(scoreText([note('C5', 16, printed('<up-bow/>'))]), [[0, { kind: 'none', slot: 'bow' }]], 'hide'))).toEqual([[]]);
  });
});

describe('a slur', () => {
  it('that is split ends before the note and begins anew on it', () => {
    expect(slurs(merged(legato, [[2, { kind: 'slur', slur: 'split' }]]))).toEqual([[0, 1], [2, 3]]);
  });

  it('split at its second note leaves the first one alone', () => {
    expect(slurs(merged(legato, [[1, { kind: 'slur', slur: 'split' }]], 'hide'))).toEqual([[1, 3]]);
  });

  it('split at its last note leaves the last one alone', () => {
    expect(slurs(merged(legato, [[3, { kind: 'slur', slur: 'split' }]], 'hide'))).toEqual([[0, 2]]);
  });

  it('split at every note is none', () => {
    expect(slurs(merged(legato, [1, 2, 3].map((index) => [index, { kind: 'slur', slur: 'split' }]), 'hide'))).toEqual([]);
  });

  it('that is rubbed out is no longer shown', () => {
    expect(slurs(merged(legato, [[0, { kind: 'none', slot: 'slur' }]], 'hide'))).toEqual([]);
  });

  it('that is rubbed out and split at once is rubbed out', () => {
    const text = merged(legato, [[0, { kind: 'none', slot: 'slur' }], [3, { kind: 'slur', slur: 'split' }]], 'hide');
    expect(slurs(text)).toEqual([]);
    expect(text.match(/<slur /g)).toBeNull();
    expect(text.match(/&lt;slur type=&quot;(start|stop)&quot; number=&quot;1&quot;\/&gt;/g)).toHaveLength(2);
  });

  it('may be joined on, note after note', () => {
    const two = scoreText([note('C5', 4) + note('D5', 4) + note('E5', 8)]);
    expect(slurs(merged(two, [[0, { kind: 'slur', slur: 'join' }], [1, { kind: 'slur', slur: 'join' }]]))).toEqual([[0, 1], [1, 2]]);
  });

  it('joined under another slur takes another number', () => {
    expect(slurs(merged(legato, [[1, { kind: 'slur', slur: 'join' }]])).toSorted()).toEqual([[0, 3], [1, 2]]);
  });
});

describe('where a mark is written', () => {
  it('before the lyric of its note, where the format wants it', () => {
    const sung = scoreText([note('C5', 16, '<lyric><text>la</text></lyric>')]);
    expect(merged(sung, [[0, { kind: 'string', string: 2 }]])).toContain('<voice>1</voice><notations><technical><string>2</string></technical></notations><lyric>');
  });

  it('into a tag that closed itself', () => {
    const text = scoreText([note('C5', 16, '<notations/>'), note('D5', 16, '<notations><technical/></notations>')]);
    expect(shown(merged(text, [[0, { kind: 'retake' }], [1, { kind: 'hooked' }]]))).toEqual([[{ kind: 'retake' }], [{ kind: 'hooked' }]]);
  });

  it('words above before the chord, with characters the encoding lacks as references', () => {
    const chord = scoreText([note('C5', 16) + note('E5', 16, '', { before: '<chord/>' })]);
    const text = merged(chord, [[1, { kind: 'text', text: 'Ⅳ & <x>' }]], 'keep', (character) => character < '\u0100');
    expect(text).toContain('<words>&#x2163; &amp; &lt;x&gt;</words></direction-type><voice>1</voice></direction><note><pitch><step>C');
    expect(part(text).measures[0]!.words).toEqual([{ text: 'Ⅳ & <x>', at: 0 }]);
  });

  it('nowhere without marks, and not on a note the part does not have', () => {
    expect(mergeMarks(legato, { parts: [{ part: 'P1', marks: [] }], superseded: 'hide', expressible: () => true })).toEqual({ ok: true, text: legato });
    const unknown = mergeMarks(legato, { parts: [{ part: 'P1', marks: [{ note: 'nowhere', value: { kind: 'retake' } }] }], superseded: 'keep', expressible: () => true });
    expect(unknown).toMatchObject({ ok: false, fault: { code: 'UNKNOWN_NOTE' } });
  });
});
