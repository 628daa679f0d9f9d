import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seatsFor } from '../../../core/music/seat.ts';
import { SetFile } from '../../../core/archive/setFile.ts';
import { demoScore } from '../../../server/demo/score/writeScore.ts';
import { unpack } from '../../../server/files/unpack.ts';
import { zipDirectory } from '../../../server/files/zipDirectory.ts';
import * as documents from '../../../server/jobs/documents.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

const databases: TestDatabase[] = [];
const KINDS: [string, () => Promise<OneEnsemble>][] = [
  ['memory', inMemory],
  [
    'PostgreSQL',
    async () => {
      const database = await createTestDatabase();
      databases.push(database);
      return inPostgres(database);
    },
  ],
];
afterAll(() => Promise.all(databases.map((database) => database.drop())));

const UNDER = { ensemble: 'Town players', conductor: 'R. Vane', season: '2026/27' };

interface Library {
  house: House;
  librarian: Visitor;
  principal: Visitor;
  programme: string;
}

async function furnished(store: OneEnsemble): Promise<Library> {
  const house = await openHouse(store, { documents });
  const lena = (await store.people.add('Lena Ashgrove', true))!;
  const ilya = (await store.people.add('Ilya Brandt', false))!;
  const section = (await store.sections.add('Violin I', 'violin'))!.id;
  await store.sections.seat(section, { seats: seatsFor(4).map((seat, i) => ({ seat, person: i ? null : ilya.id })), principal: ilya.id });
  const programme = await store.library.addProgramme({ title: 'Spring', season: '', conductor: '', days: [], deadlines: {} });
  return { house, librarian: await house.signIn(lena), principal: await house.signIn(ilya), programme: programme.id };
}

/** Lays the demo's score on the shelf; its first part is on the section's stands. */
async function work({ librarian, programme }: Library, text = demoScore()): Promise<{ work: string; part: string; others: string[] }> {
  const { json } = await librarian.upload(`/api/programmes/${programme}/works`, text, 'demo.musicxml');
  const [first, ...rest] = json.work.parts as { id: string }[];
  return { work: json.work.id, part: first!.id, others: rest.map(({ id }) => id) };
}

async function ink(principal: Visitor, part: string, measures: readonly number[]): Promise<void> {
  const { part: music } = (await principal.get(`/api/parts/${part}`)).json as { part: { measures: { ordinal: number; notes: { id: string; rest?: true }[] }[] } };
  for (const measure of measures) {
    const id = randomUUID();
    const note = music.measures[measure - 1]!.notes.find(({ rest }) => !rest)!.id;
    const say = (name: string, input: unknown) => principal.post(`/api/parts/${part}/operations/${name}`, { operation: randomUUID(), input });
    expect(await say('propose', { id, from: measure, to: measure, seats: 'all', why: 'One colour', marks: [{ note, value: { kind: 'bow', bow: 'up' } }, { note, value: { kind: 'finger', finger: 2 }, seats: ['1o'] }] })).toMatchObject({ status: 200 });
    expect(await say('adopt', { proposal: id, revision: 1, why: 'Yes' })).toMatchObject({ status: 200 });
  }
}

describe.each(KINDS)('the archive, kept in %s', (_, open) => {
  let store: OneEnsemble;
  let library: Library;
  let laid: Awaited<ReturnType<typeof work>>;
  beforeAll(async () => {
    store = await open();
    library = await furnished(store);
    laid = await work(library);
  });
  afterAll(async () => {
    await library.house.close();
    await store.close();
  });

  it('puts nothing by while nothing is inked in, and only for the librarian', async () => {
    expect(await library.librarian.post(`/api/works/${laid.work}/keep`, UNDER)).toMatchObject({ status: 409, json: { code: 'NOTHING_INKED' } });
    expect(await library.principal.post(`/api/works/${laid.work}/keep`, UNDER)).toMatchObject({ status: 403 });
  });

  it('keeps the marks of a work under ensemble, conductor and season', async () => {
    await ink(library.principal, laid.part, [1, 2, 9]);
    const kept = await library.librarian.post(`/api/works/${laid.work}/keep`, UNDER);
    expect(kept).toMatchObject({ status: 200, json: [{ ...UNDER, keptBy: 'Lena Ashgrove', fileName: 'demo.musicxml', parts: [{ section: 'Violin I', marks: 6 }] }] });
    expect((await library.principal.get('/api/archive')).json).toEqual(kept.json);
  });

  it('exported, taken in by an empty library and exported again, it is the same to the last byte', async () => {
    const exported = await zip(library.librarian);
    const other = await open();
    const empty = await furnished(other);
    expect(await empty.librarian.upload('/api/archive', exported, 'archive.zip')).toMatchObject({ status: 200, json: { added: 1, known: 0 } });
    expect((await zip(empty.librarian)).equals(exported)).toBe(true);
    expect(await empty.librarian.upload('/api/archive', exported, 'archive.zip')).toMatchObject({ json: { added: 0, known: 1 } });
    expect((await empty.librarian.get('/api/archive')).json).toEqual((await library.librarian.get('/api/archive')).json);
    await empty.house.close();
    await other.close();
  });

  it('holds the document as it came, the document with its marks, and JSON that fits the published schema', async () => {
    const bytes = await zip(library.librarian);
    const entries = await zipDirectory(bytes);
    const text = (end: string) => unpack(bytes, entries.find(({ name }) => name.endsWith(end))!).toString();
    expect(text('source.musicxml')).toBe(demoScore());
    expect(text('marked.musicxml').match(/<up-bow/g)?.length).toBe((demoScore().match(/<up-bow/g)?.length ?? 0) + 3);
    const file = SetFile.parse(JSON.parse(text('set.json')));
    expect(file.parts[0]!.marks.map(({ measure, seats, by }) => [measure, seats, by])).toEqual([1, 2, 9].flatMap((measure) => [[measure, 'all', 'Ilya Brandt'], [measure, ['1o'], 'Ilya Brandt']]));
    const published = JSON.parse((await library.house.visitor().get('/api/archive.schema.json')).text) as { required: string[] };
    expect([...published.required].sort()).toEqual(Object.keys(file).sort());
  });

  it('a spoilt archive is refused with what is wrong, and nothing of it is taken in', async () => {
    const before = (await library.librarian.get('/api/archive')).json as unknown[];
    expect(await library.librarian.upload('/api/archive', 'Dear librarian', 'archive.zip')).toMatchObject({ status: 422, json: { code: 'BAD_ARCHIVE' } });
    const bytes = await zip(library.librarian);
    expect(await library.librarian.upload('/api/archive', bytes.subarray(0, -200), 'archive.zip')).toMatchObject({ status: 422, json: { code: 'BAD_ARCHIVE' } });
    expect(await library.principal.upload('/api/archive', bytes, 'archive.zip')).toMatchObject({ status: 403 });
    expect(((await library.librarian.get('/api/archive')).json as unknown[]).length).toBe(before.length);
  });

  describe('the same work again', () => {
    let again: Awaited<ReturnType<typeof work>>;
    let set: string;
    beforeAll(async () => {
      again = await work(library, demoScore().replace(/<work-title>[^<]*</, '<work-title>Quite another heading<'));
      [{ id: set }] = (await library.librarian.get('/api/archive')).json;
    });

    it('is offered what was kept, also under another heading, known by its music', async () => {
      expect((await library.librarian.get(`/api/works/${laid.work}/offers`)).json).toMatchObject([{ id: set, by: 'heading', share: 1 }]);
      expect((await library.librarian.get(`/api/works/${again.work}/offers`)).json).toMatchObject([{ id: set, share: 1 }]);
    });

    it('the librarian lays them as slips, which the principal decides; asked twice, they lie there once', async () => {
      const asking = { id: randomUUID(), set };
      const [first] = [await library.librarian.post(`/api/works/${again.work}/bring-in`, asking), await library.librarian.post(`/api/works/${again.work}/bring-in`, asking)];
      expect(first.json.parts).toMatchObject([{ id: again.part, slips: 2, inked: 0, marks: 6, left: 0, refusal: null }]);
      const { state } = (await library.principal.get(`/api/parts/${again.part}`)).json;
      const slips = Object.values(state.proposals) as { from: number; to: number; why: string; status: string }[];
      expect(slips.map(({ from, to, why, status }) => [from, to, why, status])).toEqual([
        [1, 2, 'As played in 2026/27 under R. Vane (Town players)', 'open'],
        [9, 9, 'As played in 2026/27 under R. Vane (Town players)', 'open'],
      ]);
    });

    it('the principal inks them in at once; the librarian cannot', async () => {
      const refused = await library.librarian.post(`/api/works/${again.work}/bring-in`, { id: randomUUID(), set, ink: true });
      expect(refused.json.parts[0]).toMatchObject({ inked: 0, refusal: expect.stringContaining('principal') });
      const done = await library.principal.post(`/api/works/${again.work}/bring-in`, { id: randomUUID(), set, ink: true });
      expect(done.json.parts[0]).toMatchObject({ slips: 2, inked: 2, refusal: null });
      const { json } = await library.principal.get(`/api/parts/${again.part}/difference?from=0&to=${(await library.principal.get(`/api/parts/${again.part}`)).json.head}`);
      expect(json.changes.map(({ measure, kind }: { measure: number; kind: string }) => [measure, kind])).toEqual([1, 1, 2, 2, 9, 9].map((measure) => [measure, 'added']));
    });
  });

  it('revisions: what stood then, and what differs', async () => {
    const { revisions, head } = (await library.principal.get(`/api/parts/${laid.part}/revisions`)).json as { revisions: { seq: number; kind: string; measures: number[] }[]; head: number };
    const inked = revisions.filter((revision) => revision.kind === 'inked');
    expect(inked.map(({ measures }) => measures)).toEqual([[1], [2], [9]]);
    expect((await library.principal.get(`/api/parts/${laid.part}/revisions/${inked[0]!.seq}`)).json.marks).toHaveLength(2);
    const { changes } = (await library.principal.get(`/api/parts/${laid.part}/difference?from=${inked[0]!.seq}&to=${head}`)).json;
    expect(changes.map(({ measure, kind, seats }: { measure: number; kind: string; seats: unknown }) => [measure, kind, seats])).toEqual([2, 9].flatMap((measure) => [[measure, 'added', 'all'], [measure, 'added', ['1o']]]));
    expect(await library.principal.get(`/api/parts/${laid.part}/difference?from=0&to=${head + 1}`)).toMatchObject({ status: 404 });
  });

  it('what is to be erased from hired material is listed by measure and desk', async () => {
    const { text } = await library.librarian.get(`/api/parts/${laid.part}/erasures`);
    expect(text.split('\r\n').slice(1, 5).map((line) => line.split(',').filter((_, i) => i === 0 || i === 2 || i === 4).join(' '))).toEqual(['1 1 up-bow', '1 1 finger 2', '1 2 up-bow', '2 1 up-bow']);
  });

  it('wrong notes of the edition are kept apart, and put right by the librarian', async () => {
    const body = { measure: 3, says: 'f natural', should: 'f sharp' };
    const { json } = await library.principal.post(`/api/parts/${laid.part}/errata`, body);
    expect(json).toMatchObject({ ...body, by: 'Ilya Brandt', edition: 'demo.musicxml', settled: null });
    expect(await library.principal.post(`/api/parts/${laid.part}/errata`, { ...body, measure: 20_000 })).toMatchObject({ status: 422 });
    expect(await library.principal.put(`/api/errata/${json.id}/settled`, { settled: true })).toMatchObject({ status: 403 });
    expect(await library.librarian.put(`/api/errata/${json.id}/settled`, { settled: true })).toMatchObject({ status: 200 });
    const { text } = await library.librarian.get(`/api/works/${laid.work}/errata?form=csv`);
    expect(text.split('\r\n')[1]).toMatch(/^[^,]+,3,[^,]*,f natural,f sharp,demo\.musicxml,Ilya Brandt,\d{4}-\d\d-\d\d,\d{4}-\d\d-\d\d$/);
  });
});

/** The exported archive as bytes. */
async function zip(librarian: Visitor): Promise<Buffer> {
  const { status, raw } = await librarian.get('/api/archive/export');
  expect(status).toBe(200);
  return raw;
}
