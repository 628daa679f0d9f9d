import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { type Mark, type MarkValue, slotKey } from '../../../core/music/mark.ts';
import type { Part } from '../../../core/music/part.ts';
import { readMarks } from '../../../core/musicxml/readMarks.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { encode } from '../../../server/files/encoding.ts';
import { markFile } from '../../../server/files/markFile.ts';
import { openFile } from '../../../server/files/openFile.ts';
import { type Chance, chance } from '../../support/chance.ts';
import { CORPUS, corpusPath, corpusScores, everySoMany } from '../../support/corpus.ts';
import { canonicalForm, isWellFormed, schemaErrors } from '../../support/libxml.ts';

const MARKS = 200;
const totals = { files: 0, marks: 0, refused: 0 };

function randomValue({ below, pick, happens }: Chance): MarkValue {
  const finger = () => pick([0, 1, 2, 3, 4, 'thumb'] as const);
  return pick<() => MarkValue>([
    () => ({ kind: 'finger', finger: finger(), ...(happens(0.3) ? { substitution: finger() } : {}) }),
    () => ({ kind: 'string', string: 1 + below(4) }),
    () => ({ kind: 'bow', bow: pick(['up', 'down'] as const) }),
    () => ({ kind: 'harmonic', harmonic: pick(['natural', 'artificial'] as const) }),
    () => ({ kind: 'reach', reach: pick(['extension', 'contraction'] as const) }),
    () => ({ kind: 'change', after: pick([0, 1, '3/2', '1/3'] as const) }),
    () => ({ kind: 'retake' }),
    () => ({ kind: 'hooked' }),
    () => ({ kind: 'slur', slur: pick(['split', 'join'] as const) }),
    () => ({ kind: 'text', text: pick(['sul G', 'point', 'Ⅳ & <frog>', 'à la pointe']) }),
  ])();
}

/** At most `MARKS` marks, spread over the parts that have notes, no slot of a note twice. */
function randomMarks(parts: readonly Part[], seed: number): Map<string, Mark[]> {
  const dice = chance(seed);
  const playing = parts.map((part) => ({ id: part.id, notes: part.measures.flatMap(({ notes }) => notes.filter(({ rest }) => !rest)) })).filter(({ notes }) => notes.length);
  const chosen = playing.length > 3 ? [dice.pick(playing), dice.pick(playing)] : playing;
  const taken = new Set<string>();
  const marks = new Map<string, Mark[]>();
  for (let i = 0; chosen.length && i < MARKS; i++) {
    const { id, notes } = dice.pick(chosen);
    const mark: Mark = { note: dice.pick(notes).id, value: randomValue(dice) };
    const key = `${id} ${mark.note} ${slotKey(mark.value)}`;
    if (taken.has(key)) continue;
    taken.add(key);
    marks.set(id, [...(marks.get(id) ?? []), mark]);
  }
  return marks;
}

const sorted = (values: readonly unknown[]) => values.map((value) => JSON.stringify(value)).toSorted();

/** Elements and texts of a canonical document, white space between elements left out. */
const tokens = (canonical: string) => canonical.match(/<[^>]*>|[^<]+/g)!.map((token) => (token.startsWith('<') ? token : token.trim())).filter(Boolean);

/** What must be taken out of `marked` so that `source` is left; fails when that cannot be done by taking out alone. */
function takenOut(source: readonly string[], marked: readonly string[]): Map<string, number> {
  const out = new Map<string, number>();
  let at = 0;
  for (const token of marked) {
    if (token === source[at]) at++;
    else out.set(token, (out.get(token) ?? 0) + 1);
  }
  expect(at).toBe(source.length);
  return out;
}

/** Written by hand from the format's documentation, to hold against what the program writes. */
const START_TAGS: { [Kind in Exclude<MarkValue['kind'], 'none'>]: (value: Extract<MarkValue, { kind: Kind }>) => string[] } = {
  finger: ({ finger, substitution }) => [finger === 'thumb' ? '<thumb-position>' : '<fingering>', ...(substitution === undefined ? [] : ['<fingering substitution="yes">'])],
  string: () => ['<string>'],
  bow: ({ bow }) => [`<${bow}-bow placement="above">`],
  harmonic: ({ harmonic }) => ['<harmonic>', `<${harmonic}>`],
  reach: () => ['<other-technical>'],
  change: () => ['<other-technical smufl="stringsChangeBowDirection">'],
  retake: () => ['<other-technical>'],
  hooked: () => ['<other-technical>'],
  slur: () => ['<other-technical>'],
  text: () => ['<direction placement="above">', '<direction-type>', '<words>'],
};

function expectedTags(marks: readonly Mark[]): Record<string, number> {
  const counts: Record<string, number> = {};
  for (const { value } of marks) {
    if (value.kind === 'none') continue;
    for (const tag of (START_TAGS[value.kind] as (value: MarkValue) => string[])(value)) counts[tag] = (counts[tag] ?? 0) + 1;
  }
  return counts;
}

const COUNTED = /^<(fingering|thumb-position|string|up-bow|down-bow|harmonic|natural|artificial|other-technical|direction|direction-type|words)[ >]/;
const ALLOWED = /^<\/?(notations|technical|slur|voice|staff)[ >]/;

describe.skipIf(!CORPUS)('every published score (needs CORPUS_DIR)', () => {
  afterAll(() => console.log(`Published scores: ${totals.files} read and marked with ${totals.marks} marks, ${totals.refused} refused as not well-formed.`));

  it.each(everySoMany(corpusScores()))('%s takes 200 random marks and keeps everything else', async (name) => {
    const bytes = readFileSync(corpusPath(name));
    const file = await openFile(bytes, name);
    expect(file.ok).toBe(true);
    if (!file.ok) return;
    const source = encode(file.text, file.encoding);
    const read = readScore(file.text);
    if (!read.ok) {
      totals.refused++;
      expect(isWellFormed(source)).toBe(false);
      expect(read.fault).toMatchObject({ code: 'NOT_WELL_FORMED', line: expect.any(Number) as number });
      return;
    }
    const form = file.archive ? 'mxl' : 'musicxml';
    const untouched = await markFile(bytes, file, [], 'keep', form);
    expect(untouched.ok && Buffer.compare(untouched.bytes, bytes)).toBe(0);

    const marks = randomMarks(read.score.parts, 20261125 + name.length);
    const all = [...marks.values()].flat();
    totals.files++;
    totals.marks += all.length;
    const made = await markFile(bytes, file, [...marks].map(([part, list]) => ({ part, marks: list })), 'keep', form);
    expect(made.ok).toBe(true);
    if (!made.ok) return;
    const again = await openFile(made.bytes, name);
    expect(again.ok).toBe(true);
    if (!again.ok) return;
    expect(again.encoding).toEqual(file.encoding);
    const marked = encode(again.text, again.encoding);

    // A reader that is not ours: the source is left when additions are taken out, and the additions are what was asked for.
    const out = takenOut(tokens(canonicalForm(source)), tokens(canonicalForm(marked)));
    const tags = [...out].filter(([token]) => token.startsWith('<') && !token.startsWith('</'));
    expect(Object.fromEntries(tags.filter(([token]) => COUNTED.test(token)))).toEqual(expectedTags(all));
    expect(tags.filter(([token]) => !COUNTED.test(token) && !ALLOWED.test(token))).toEqual([]);

    // Our reader: exactly these marks on these notes, every other property as before.
    const reread = readScore(again.text);
    expect(reread.ok).toBe(true);
    if (!reread.ok) return;
    read.score.parts.forEach((part, p) => {
      const theirs = reread.score.parts[p];
      expect(theirs?.measures.length).toBe(part.measures.length);
      const byNote = new Map<string, Mark[]>();
      for (const mark of marks.get(part.id) ?? []) byNote.set(mark.note, [...(byNote.get(mark.note) ?? []), mark]);
      part.measures.forEach((measure, i) => {
        measure.notes.forEach((note, k) => {
          const now = theirs?.measures[i]?.notes[k];
          if (!now) return expect(now).toBeDefined();
          const wanted = (byNote.get(note.id) ?? []).map(({ value }) => value).filter(({ kind }) => kind !== 'text');
          if (wanted.length || now.technical.length !== note.technical.length) {
            expect(sorted(readMarks(now.technical).map(({ value }) => value))).toEqual(sorted([...readMarks(note.technical).map(({ value }) => value), ...wanted]));
          }
          const plain = JSON.stringify({ ...note, technical: 0, slurs: 0 });
          if (JSON.stringify({ ...now, technical: 0, slurs: 0 }) !== plain) expect({ ...now, technical: 0, slurs: 0 }).toEqual({ ...note, technical: 0, slurs: 0 });
        });
      });
      const words = (of: Part | undefined) => of?.measures.flatMap((measure) => measure.words.map(({ text }) => text)) ?? [];
      const added = (marks.get(part.id) ?? []).flatMap(({ value }) => (value.kind === 'text' ? [value.text] : []));
      expect(sorted(words(theirs))).toEqual(sorted([...words(part), ...added]));
    });

    const before = schemaErrors(source, join(CORPUS ?? '', 'musicxml-4.0-schema'));
    const after = schemaErrors(marked, join(CORPUS ?? '', 'musicxml-4.0-schema'));
    expect([...after].filter(([message, count]) => count > (before.get(message) ?? 0))).toEqual([]);
  }, 180_000);
});
