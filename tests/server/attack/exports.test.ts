import { randomUUID } from 'node:crypto';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { PartView } from '../../../core/agreement/wire/http.ts';
import { withDocument } from '../../support/libxml.ts';
import { NAUGHTY } from '../../support/naughty.ts';
import { attacked } from './attacked.ts';
import { formOf, type Answer } from './scene.ts';

const { scene } = attacked();
const PATIENT = { timeout: 600_000 };
/** No document can hold these (XML 1.0, 2.2): a mark with one is refused. */
 
const NOT_IN_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;
const short = NAUGHTY.map((text) => text.trim()).filter((text) => text && [...text].length <= 60 && text.length <= 60);
const WRITTEN = [...new Set(short.filter((text) => !NOT_IN_XML.test(text)))];
const MARKS_AT_ONCE = 40;
const ROUNDS = 6;

const oneLine = (text: string): string => text.replace(/\s+/gu, ' ').trim();
const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

let words: string[];
let asked: (path: string) => Promise<Answer>;

/** Marks with words on every note there is room for, each slip with a naughty reason, all inked in. */
beforeAll(async () => {
  const { principal, part, send } = scene();
  asked = (path) => send(path, { cookie: principal.cookie });
  const view = (await asked(`/api/parts/${part}`)).json as PartView;
  const notes = view.part.measures.flatMap((measure) => measure.notes.filter(({ pitch, chord, grace, cue }) => pitch && !chord && !grace && !cue).map(({ id }) => ({ id, measure: measure.ordinal })));
  words = WRITTEN.slice(0, Math.min(notes.length, MARKS_AT_ONCE * ROUNDS));
  for (let at = 0; at < words.length; at += MARKS_AT_ONCE) {
    const some = words.slice(at, at + MARKS_AT_ONCE).map((text, n) => ({ text, ...notes[at + n]! }));
    const id = randomUUID();
    const laid = await send(`/api/parts/${part}/operations/propose`, { method: 'POST', cookie: principal.cookie, body: { operation: randomUUID(), input: { id, from: some[0]!.measure, to: some.at(-1)!.measure, seats: 'all', why: some[0]!.text, marks: some.map(({ id: note, text }) => ({ note, value: { kind: 'text', text } })) } } });
    expect([laid.status, laid.text]).toEqual([200, expect.anything()]);
    const inked = await send(`/api/parts/${part}/operations/adopt`, { method: 'POST', cookie: principal.cookie, body: { operation: randomUUID(), input: { proposal: id, revision: 1, why: some.at(-1)!.text } } });
    expect([inked.status, inked.text]).toEqual([200, expect.anything()]);
  }
  for (const text of WRITTEN.slice(0, 60)) await send(`/api/parts/${part}/errata`, { method: 'POST', cookie: principal.cookie, body: { measure: 1, says: text, should: text } });
}, 600_000);

/** RFC 4180, by hand. */
function cells(csv: string): string[] {
  return [...csv.replace(/^\ufeff/, '').matchAll(/(?:^|,|\r\n)(?:"((?:[^"]|"")*)"|([^",\r\n]*))/g)].map(([, quoted, plain]) => (quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"')));
}

describe('words that no document can hold', () => {
  it.each(short.filter((text) => NOT_IN_XML.test(text)))('%j is refused as a mark, with a sentence', async (text) => {
    const { principal, part, send } = scene();
    const { part: content } = (await asked(`/api/parts/${part}`)).json as PartView;
    const note = content.measures[0]!.notes.find(({ pitch }) => pitch)?.id ?? content.measures.flatMap(({ notes }) => notes).find(({ pitch }) => pitch)!.id;
    const { status, json } = await send(`/api/parts/${part}/operations/propose`, { method: 'POST', cookie: principal.cookie, body: { operation: randomUUID(), input: { id: randomUUID(), from: 1, to: 4, seats: 'all', why: 'x', marks: [{ note, value: { kind: 'text', text } }] } } });
    expect([status, json.code]).toEqual([422, 'BAD_INPUT']);
  });
});

describe('naughty words that leave the library', PATIENT, () => {
  it('in a table for a spreadsheet: no cell is a formula, every text comes back whole', async () => {
    for (const path of [`/api/parts/${scene().part}/changes?form=csv`, `/api/works/${scene().work}/errata?form=csv`]) {
      const answer = await asked(path);
      expect(answer.headers).toMatchObject({ 'content-type': 'text/csv; charset=utf-8', 'x-content-type-options': 'nosniff', 'content-disposition': expect.stringMatching(/^attachment; /) });
      const all = cells(answer.text);
      expect(all.length).toBeGreaterThan(300);
      expect(all.filter((cell) => /^[=+\-@\t\r\uff1d\uff0b\uff0d\uff20]/.test(cell))).toEqual([]);
      const whole = all.map((cell) => cell.replace(/^'(?=[=+\-@\t\r\uff1d\uff0b\uff0d\uff20])/, ''));
      const due = path.includes('errata') ? WRITTEN.slice(0, 60) : words;
      expect(due.filter((text) => !whole.some((cell) => cell.includes(text)))).toEqual([]);
    }
  });

  it('in the list of changes as a text: every word is there', async () => {
    const { text, headers } = await asked(`/api/parts/${scene().part}/changes?form=text`);
    expect(headers['content-type']).toBe('text/plain; charset=utf-8');
    const line = oneLine(text);
    expect(words.filter((word) => !line.includes(oneLine(word)))).toEqual([]);
  });

  it('in an exported score: well-formed, and every word is there as it was written', async () => {
    const { bytes, headers } = await asked(`/api/parts/${scene().part}/export?form=musicxml`);
    expect(headers['content-disposition']).toMatch(/^attachment; /);
    const there = withDocument(bytes, (document) => document.find('//words | //other-technical').map((node) => (node as unknown as { content: string }).content));
    expect(words.filter((word) => !there.includes(word))).toEqual([]);
  });

  it('in MEI: well-formed, and the words are there', async () => {
    const { bytes } = await asked(`/api/parts/${scene().part}/print?form=mei`);
    const text = withDocument(bytes, (document) => document.toString());
    expect(text.length).toBeGreaterThan(1000);
    expect(words.filter((word) => !oneLine(withDocument(bytes, (document) => (document.root as unknown as { content: string }).content)).includes(oneLine(word))).length).toBe(0);
  });

  it('as pages: a PDF that opens, runs nothing and leads nowhere', async () => {
    const { bytes, headers } = await asked(`/api/parts/${scene().part}/print?form=pdf`);
    expect(headers['content-type']).toBe('application/pdf');
    const document = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise;
    expect(document.numPages).toBeGreaterThan(0);
    expect(await document.getJSActions()).toBeNull();
    expect(await document.getAttachments()).toBeNull();
    for (let page = 1; page <= document.numPages; page++) expect(await (await document.getPage(page)).getAnnotations()).toEqual([]);
    await document.destroy();
  });
});

describe('naughty words that come in a score', PATIENT, () => {
  it('go out again as they came: in the source, in its export, in its pages', async () => {
    const text = WRITTEN.filter((one) => /[<>&"']/.test(one)).slice(0, 12).join(' ');
    const score = `<?xml version="1.0" encoding="UTF-8"?><score-partwise version="4.0"><work><work-title>${escaped(text)}</work-title></work><identification><creator type="composer">${escaped(text)}</creator></identification><part-list><score-part id="P1"><part-name>${escaped('Violin I <script>')}</part-name></score-part></part-list><part id="P1"><measure number="${escaped('"><x>')}"><attributes><divisions>1</divisions><time><beats>1</beats><beat-type>4</beat-type></time></attributes><direction><direction-type><words>${escaped(text)}</words></direction-type></direction><note><pitch><step>C</step><octave>5</octave></pitch><duration>1</duration><voice>1</voice><lyric><text>${escaped(text)}</text></lyric></note></measure></part></score-partwise>`;
    const { librarian, programme, send } = scene();
    const laid = await send(`/api/programmes/${programme}/works`, { method: 'POST', cookie: librarian.cookie, ...(await formOf([['score.musicxml', score]])) });
    expect(laid.status).toBe(200);
    expect(laid.json.work.title).toBe(text);
    const { id } = laid.json.work.parts[0];
    const get = (path: string) => send(`/api/parts/${id}/${path}`, { cookie: librarian.cookie });
    expect((await get('source')).text).toBe(score);
    expect((await get('export')).text).toBe(score);
    for (const path of ['engraving', 'print?form=svg', 'print?form=mei']) {
      const answer = await get(path);
      expect([path, answer.status]).toEqual([path, 200]);
      const scripts = withDocument(answer.bytes, (document) => document.find("//*[local-name()='script'] | //*[local-name()='foreignObject'] | //@*[starts-with(name(), 'on')] | //*[local-name()='a' or local-name()='image']").length);
      expect([path, scripts]).toEqual([path, 0]);
    }
    expect((await get('print?form=pdf')).bytes.subarray(0, 5).toString()).toBe('%PDF-');
  });
});
