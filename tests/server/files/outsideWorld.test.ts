import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Mark, MarkValue } from '../../../core/music/mark.ts';
import { isStringPart, type StringPart } from '../../../core/music/part.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { demoScore } from '../../../server/demo/score/writeScore.ts';
import { openFile } from '../../../server/files/openFile.ts';
import { work } from '../../../server/jobs/work.ts';
import type { PrintOrder } from '../../../server/print/order.ts';
import { added, signsOf } from '../../e2e/exported.ts';
import { CORPUS, corpusPath } from '../../support/corpus.ts';
import { EVERY_VALUE, everyKind } from '../../support/everyKind.ts';
import { schemaErrors } from '../../support/libxml.ts';
import { moreOf, outsideReader, type Outside } from '../../support/outsideReader.ts';
import { note, scoreText } from '../../support/scoreText.ts';

/** Solo parts full of printed marks, a quartet and orchestral scores; the shorter ones, since each is engraved four times. */
const SCORES = [
  'violin-printed-marks/wieniawski_op10_1.musicxml', 'violin-printed-marks/wieniawski_op10_3.mxl', 'violin-printed-marks/wieniawski_op10_5.musicxml', 'violin-printed-marks/wieniawski_op10_8.musicxml',
  'violin-printed-marks/noskowski_variations_p1.mxl', 'violin-printed-marks/wieniawski_op21_violin.mxl', 'violin-printed-marks/mlynarski_mazur_violin.musicxml', 'bach-violin-solo/bwv1001.mxl', 'bach-violin-solo/bwv1006.mxl',
  'openscore-quartets/Mozart_String_Quartet_No.18_in_A_major__K.464__Op._10__No._5_sq7070781.mxl', 'openscore-orchestra/Bach_Brandenburg3_BWV.1048_3.mxl', 'openscore-orchestra/Bruckner_WAB.105_3b_Trio.mxl',
];
const LOOK = { heading: { title: '', composer: '', instrument: '', seat: '', edition: '' }, paper: 'a4', margins: 'usual', staff: 7.5, fingerings: 'all', form: 'mei', at: '2026-11-26T09:00:00Z' } as const;

interface Source {
  bytes: Buffer;
  fileName: string;
  text: string;
  part: StringPart;
}

let outside: (text: string) => Outside;
beforeAll(async () => {
  outside = await outsideReader();
});

const textOf = async (bytes: Uint8Array, fileName: string): Promise<string> => {
  const opened = await openFile(Buffer.from(bytes), fileName);
  if (!opened.ok) throw new Error(opened.fault.text);
  return opened.text;
};

async function sourceOf(bytes: Buffer, fileName: string, which: (parts: StringPart[]) => StringPart): Promise<Source> {
  const text = await textOf(bytes, fileName);
  const read = readScore(text);
  if (!read.ok) throw new Error(read.fault.text);
  return { bytes, fileName, text, part: which(read.score.parts.filter(isStringPart)) };
}

async function asMusicXml({ bytes, fileName, part }: Source, marks: readonly Mark[]): Promise<string> {
  const made = await work.markDocument({ bytes, fileName, part: part.id, ids: part, marks, form: 'musicxml', superseded: 'hide' });
  if (!made.ok) throw new Error(made.trouble.text);
  return textOf(made.bytes, 'marked.musicxml');
}

async function asMei({ bytes, fileName, part }: Source, marks: readonly Mark[]): Promise<string> {
  const made = await work.printPart({ ...LOOK, bytes, fileName, part: part.id, stored: part, marks: marks as PrintOrder['marks'] });
  if (!made.ok) throw new Error(made.trouble.text);
  return Buffer.from(made.files[0]!.bytes).toString('utf8');
}

/** As the format's documentation has them; our own words where it has none. */
const SIGNS: { [Kind in MarkValue['kind']]?: (value: Extract<MarkValue, { kind: Kind }>) => string[] } = {
  finger: ({ finger, substitution }) => [finger === 'thumb' ? 'thumb-position' : `fingering ${finger}`, ...(substitution === undefined ? [] : [`fingering ${substitution}`])],
  string: ({ string }) => [`string ${string}`],
  reach: ({ reach }) => [`other-technical ${reach}`],
  harmonic: () => ['harmonic'],
  bow: ({ bow }) => [`${bow}-bow`],
  change: ({ after }) => [`other-technical bow change${after === 0 ? '' : ` after ${after}`}`],
  retake: () => ['other-technical retake'],
  hooked: () => ['other-technical hooked'],
  slur: ({ slur }) => [`other-technical slur ${slur}`],
  text: ({ text }) => [`words ${text}`],
};

function owed(part: StringPart, marks: readonly Mark[]): string[] {
  const places = new Map(part.measures.flatMap(({ ordinal, notes }) => notes.map(({ id, index }) => [id, `${ordinal}/${index}`] as const)));
  return marks.flatMap(({ note: id, value }) => (SIGNS[value.kind] as (value: MarkValue) => string[])(value).map((sign) => `${places.get(id)} ${sign}`));
}

/** What the other program shows of a sign in MusicXML; it passes over strings, the thumb and technical signs it has no name for. */
function shownAs(sign: string): string | null {
  const [, name, words = ''] = /^\S+ (\S+) ?(.*)$/s.exec(sign)!;
  const names: Record<string, string> = { fingering: 'fing', 'up-bow': 'upbow', 'down-bow': 'dnbow', harmonic: 'harm', words: 'dir' };
  return words.startsWith('bow change') ? 'change' : (names[name!] ?? null);
}

function tally(names: readonly (string | null)[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const name of names) if (name) counts[name] = (counts[name] ?? 0) + 1;
  return counts;
}

/** In MEI everything is shown: what the engraver has no sign for stands in words. */
function inMei({ value }: Mark): string[] {
  if (value.kind === 'finger') return value.finger === 'thumb' ? ['dir'] : value.substitution === undefined ? ['fing'] : ['fing', 'fing'];
  if (value.kind === 'bow') return [value.bow === 'up' ? 'upbow' : 'dnbow'];
  if (value.kind === 'harmonic') return ['harm'];
  if (value.kind === 'slur') return value.slur === 'join' ? ['slur'] : [];
  // A change has its sign beside the words.
  return value.kind === 'change' ? ['change', 'dir'] : ['dir'];
}

/** A mark that takes the place of nothing printed, so that what is new can be counted. */
const onBare = (part: StringPart, marks: readonly Mark[]): Mark[] => {
  const bare = new Set(part.measures.flatMap(({ notes }) => notes.filter(({ technical }) => technical.length === 0).map(({ id }) => id)));
  return marks.filter(({ note: id }) => bare.has(id));
};

async function holds(source: Source): Promise<void> {
  const marks = everyKind(source.part);
  const marked = await asMusicXml(source, marks);
  const [before, after] = [signsOf(source.text, source.part.id), signsOf(marked, source.part.id)];
  for (const sign of owed(source.part, marks)) expect(after).toContain(sign);
  if (CORPUS) {
    const schema = join(CORPUS, 'musicxml-4.0-schema');
    const known = schemaErrors(Buffer.from(source.text), schema);
    expect([...schemaErrors(Buffer.from(marked), schema)].filter(([message, count]) => count > (known.get(message) ?? 0))).toEqual([]);
  }
  const [plain, seen] = [outside(source.text), outside(marked)];
  expect(added(plain.warnings, seen.warnings)).toEqual([]);
  const gone = tally(added(after, before).map(shownAs));
  const come = tally([...added(before, after).map(shownAs), ...marks.map(({ value }) => (value.kind === 'slur' && value.slur === 'join' ? 'slur' : null))]);
  const wanted = Object.fromEntries([...new Set([...Object.keys(come), ...Object.keys(gone)])].map((name) => [name, (come[name] ?? 0) - (gone[name] ?? 0)] as const).filter(([, count]) => count !== 0));
  expect(moreOf(plain.signs, seen.signs)).toEqual(wanted);

  const bare = onBare(source.part, marks);
  const [plainMei, mei] = [outside(await asMei(source, [])), outside(await asMei(source, bare))];
  expect(added(plainMei.warnings, mei.warnings)).toEqual([]);
  expect(moreOf(plainMei.signs, mei.signs)).toEqual(tally(bare.flatMap(inMei)));
}

describe('files the outside world reads', { timeout: 240_000 }, () => {
  it.each(['Violin I', 'Violin II', 'Viola', 'Violoncello', 'Double bass'])('the demo’s %s with marks of every kind: none is lost, and no reader has anything new to complain of', async (name) => {
    const source = await sourceOf(Buffer.from(demoScore()), 'low-water.musicxml', (parts) => parts.find((part) => part.name === name)!);
    expect(everyKind(source.part)).toHaveLength(EVERY_VALUE.length);
    await holds(source);
  });

  it('a printed mark that is replaced and a slur that is split are seen as decided, not beside what was printed', async () => {
    const slur = (type: string) => `<type>quarter</type><notations><slur type="${type}" number="1"/></notations>`;
    const text = scoreText([note('C5', 4, '<type>quarter</type><notations><technical><down-bow/></technical></notations>') + note('D5', 4, slur('start')) + note('E5', 4, '<type>quarter</type>') + note('F5', 4, slur('stop'))]);
    const source = await sourceOf(Buffer.from(text), 'small.musicxml', ([part]) => part!);
    const [first, , third] = source.part.measures[0]!.notes;
    const marks: Mark[] = [{ note: first!.id, value: { kind: 'bow', bow: 'up' } }, { note: third!.id, value: { kind: 'slur', slur: 'split' } }];
    expect(outside(await asMusicXml(source, marks))).toMatchObject({ warnings: [], signs: { upbow: 1, dnbow: 0, slur: 1 } });
    expect(outside(await asMei(source, marks))).toMatchObject({ warnings: [], signs: { upbow: 1, dnbow: 0, slur: 1 } });
  });

  it('a desk’s copy has the outside player’s marks above the staff and the inside player’s below', async () => {
    const text = scoreText([['C5', 'D5', 'E5', 'F5'].map((pitch, i) => note(pitch, 4, `<type>quarter</type>${i ? '' : '<notations><technical><fingering>2</fingering></technical></notations>'}`)).join('')]);
    const source = await sourceOf(Buffer.from(text), 'desk.musicxml', ([part]) => part!);
    const [a, b, c] = source.part.measures[0]!.notes.map(({ id }) => id);
    const [outer, inner] = [{ seats: ['1o'] }, { seats: ['1i'] }];
    const marks = [
      { note: a!, value: { kind: 'finger', finger: 2 }, ...outer }, { note: a!, value: { kind: 'finger', finger: 3 }, ...inner },
      { note: b!, value: { kind: 'string', string: 3 }, ...inner }, { note: b!, value: { kind: 'bow', bow: 'up' }, ...inner }, { note: b!, value: { kind: 'bow', bow: 'down' }, ...outer },
      { note: c!, value: { kind: 'text', text: 'light' }, ...inner }, { note: c!, value: { kind: 'finger', finger: 1 }, seats: 'all' },
    ] as Mark[];
    const xml = await asMusicXml(source, marks);
    for (const written of ['<fingering placement="above">2</fingering><fingering placement="below">3</fingering>', '<string placement="below">3</string><up-bow placement="below"/><down-bow placement="above"/>', '<direction placement="below"><direction-type><words>light</words>', '<fingering>1</fingering>']) expect(xml).toContain(written);
    const mei = await asMei(source, marks);
    const placed = [...mei.matchAll(/<(fing|dir|artic)\b([^>]*)>([^<]*)/g)].map(([, name, attributes, words]) => `${name} ${/place="(\w+)"/.exec(attributes!)?.[1] ?? '-'} ${/artic="(\w+)"/.exec(attributes!)?.[1] ?? words!.trim()}`);
    expect(placed.sort()).toEqual(['artic above dnbow', 'dir below III, up-bow', 'dir below light', 'fing - 1', 'fing above 2', 'fing below 3']);
    for (const file of [xml, mei]) expect(outside(file).warnings).toEqual([]);
  });

  describe.skipIf(!CORPUS)('published scores (needs CORPUS_DIR)', () => {
    it.each(SCORES)('%s', async (name) => holds(await sourceOf(readFileSync(corpusPath(name)), name, (parts) => parts[SCORES.indexOf(name) % parts.length]!)));
  });
});
