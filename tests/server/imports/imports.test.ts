import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { WorkView } from '../../../core/agreement/wire/http.ts';
import { isUnderWay, type ImportView } from '../../../core/agreement/wire/imports.ts';
import { fakeDocuments } from '../../support/fakeDocuments.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

/** Reading stands still until it is let go; stopping ends it at once, as a worker's does. */
function gate() {
  const waiting: (() => void)[] = [];
  let open = false;
  return {
    openAll() {
      open = true;
      for (const go of waiting.splice(0)) go();
    },
    pass: (signal?: AbortSignal) =>
      new Promise<void>((resolve, reject) => {
        if (open) return resolve();
        waiting.push(resolve);
        signal?.addEventListener('abort', () => reject(signal.reason as Error));
      }),
  };
}

let house: House;
let librarian: Visitor;
let programme: string;
let door: ReturnType<typeof gate>;
let clock: Date;
beforeEach(async () => {
  door = gate();
  clock = new Date('2026-11-26T09:00:00Z');
  const store = await inMemory();
  house = await openHouse(store, {
    now: () => clock,
    documents: {
      ...fakeDocuments,
      async importScore(bytes, fileName, options) {
        options?.onReached?.(0);
        options?.onReached?.(1);
        await door.pass(options?.signal);
        return fakeDocuments.importScore(bytes, fileName);
      },
    },
  });
  librarian = await house.signIn(await store.people.add('Lena Ashgrove', true));
  programme = (await librarian.post('/api/programmes', { title: 'Harbour lights' })).json.id;
});
afterEach(() => house.close());

const works = () => `/api/programmes/${programme}/works`;
const begin = async (files: Record<string, string>, path = works()): Promise<ImportView> => {
  const reply = await librarian.begin(path, files);
  expect(reply).toMatchObject({ status: 202, headers: { location: `/api/imports/${reply.json.id}` } });
  return reply.json as ImportView;
};
const look = async (id: string): Promise<ImportView> => (await librarian.get(`/api/imports/${id}`)).json as ImportView;
const until = async (id: string, holds: (view: ImportView) => boolean): Promise<ImportView> => {
  for (;;) {
    const view = await look(id);
    if (holds(view)) return view;
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
};
const ended = (id: string) => until(id, (view) => !isUnderWay(view));
const onShelf = async (): Promise<WorkView[]> => (await librarian.get('/api/shelf')).json.programmes[0].works as WorkView[];

describe('a score comes in in the background', () => {
  it('whoever sends it is answered at once, sees how far it is, and what it came to', async () => {
    const { id, of } = await begin({ 'harbour.musicxml': 'Violin I:4,Oboe:4' });
    expect(await until(id, ({ done }) => done === 1)).toMatchObject({ kind: 'work', programme, step: 'reading', of: 4, files: [{ fileName: 'harbour.musicxml', step: 'reading', parts: [], trouble: null }] });
    expect(await onShelf()).toEqual([]);
    door.openAll();
    const view = await ended(id);
    expect(view).toMatchObject({ step: 'done', done: of, files: [{ step: 'read', parts: ['Violin I'] }], trouble: null, answer: { notes: { kept: 0, added: 16, removed: 0 } } });
    expect(await onShelf()).toEqual([view.answer!.work]);
  });

  it('the second waits for the first, and both are listed in the order they came', async () => {
    const first = await begin({ 'a.xml': 'Violin I:4' });
    await until(first.id, ({ done }) => done === 1);
    const second = await begin({ 'b.xml': 'Viola:4' });
    expect((await librarian.get('/api/imports')).json).toMatchObject([{ id: first.id, step: 'reading' }, { id: second.id, step: 'waiting', done: 0 }]);
    door.openAll();
    await ended(second.id);
    expect((await onShelf()).map(({ fileName }) => fileName)).toEqual(['a.xml', 'b.xml']);
  });

  it('one that is stopped, at work or waiting, leaves nothing behind', async () => {
    const first = await begin({ 'a.xml': 'Violin I:4' });
    const second = await begin({ 'b.xml': 'Viola:4' });
    await until(first.id, ({ done }) => done === 1);
    for (const { id } of [second, first]) expect((await librarian.remove(`/api/imports/${id}`)).status).toBe(200);
    for (const { id } of [first, second]) expect(await ended(id)).toMatchObject({ step: 'stopped', answer: null, trouble: { code: 'STOPPED' } });
    door.openAll();
    expect(await onShelf()).toEqual([]);
    await librarian.remove(`/api/imports/${first.id}`);
    expect((await librarian.get(`/api/imports/${first.id}`)).status).toBe(404);
    expect(await ended((await begin({ 'c.xml': 'Viola:4' })).id)).toMatchObject({ step: 'done' });
  });

  it('what it came to is kept for a day', async () => {
    door.openAll();
    const { id } = await begin({ 'a.xml': 'Violin I:4' });
    await ended(id);
    clock = new Date('2026-11-27T08:59:00Z');
    expect((await librarian.get('/api/imports')).json).toHaveLength(1);
    clock = new Date('2026-11-27T09:01:00Z');
    expect((await librarian.get('/api/imports')).json).toEqual([]);
  });

  it('a fault of ours is told under a name, and the next import goes on', async () => {
    door.openAll();
    house.store.library.addWork = () => Promise.reject(new Error('secret of the house'));
    const view = await ended((await begin({ 'a.xml': 'Violin I:4' })).id);
    expect(view).toMatchObject({ step: 'refused', trouble: { code: 'FAULT', incident: expect.stringMatching(/^\w+ \w+ \d{4}$/) } });
    expect(JSON.stringify(view)).not.toContain('secret');
    expect(house.lines.join()).toContain(`${view.trouble!.incident}" in import ${view.id} secret of the house`);
    expect(await ended((await begin({ 'b.xml': 'broken' })).id)).toMatchObject({ trouble: { code: 'NOT_WELL_FORMED' } });
  });

  it('it is for the librarian alone', async () => {
    const visitor = await house.signIn(await house.store.people.add('Mona Castell', false));
    const { id } = await begin({ 'a.xml': 'Violin I:4' });
    expect((await visitor.begin(works(), { 'a.xml': 'Violin I:4' })).status).toBe(403);
    expect((await visitor.get('/api/imports')).status).toBe(403);
    expect((await visitor.get(`/api/imports/${id}`)).status).toBe(403);
    expect((await visitor.remove(`/api/imports/${id}`)).status).toBe(403);
    door.openAll();
    expect(await ended(id)).toMatchObject({ step: 'done' });
  });
});

describe('several files make one work', () => {
  beforeEach(() => door.openAll());

  it('each file is an edition of its own, its parts beside the others', async () => {
    const view = await ended((await begin({ 'v1.xml': 'Violin I:4', 'v2.xml': 'Violin II:4', 'va.xml': 'Viola:5' })).id);
    expect(view).toMatchObject({ step: 'done', of: 8, files: [{ parts: ['Violin I'] }, { parts: ['Violin II'] }, { parts: ['Viola'] }] });
    const { parts } = view.answer!.work;
    expect(parts.map(({ name, measures }) => [name, measures])).toEqual([['Violin I', 4], ['Violin II', 4], ['Viola', 5]]);
    expect((await librarian.get(`/api/parts/${parts[1]!.id}/source`)).text).toBe('Violin II:4');
  });

  it('where one is refused nothing is kept, and every file is told of', async () => {
    const view = await ended((await begin({ 'v1.xml': 'Violin I:4', 'v2.xml': 'broken', 'ob.xml': 'Oboe:4', 'va.xml': 'Viola:4' })).id);
    expect(view).toMatchObject({ step: 'refused', trouble: { code: 'NOT_WELL_FORMED', line: 7, text: expect.stringContaining('v2.xml') } });
    expect(view.files.map(({ step, trouble }) => [step, trouble?.code])).toEqual([['read', undefined], ['refused', 'NOT_WELL_FORMED'], ['refused', 'NO_STRING_PARTS'], ['read', undefined]]);
    expect(await onShelf()).toEqual([]);
  });

  it('movements with the same parts are told apart by their file', async () => {
    const { answer } = await ended((await begin({ 'I.xml': 'Violin I:4,Viola:4', 'II.xml': 'Violin I:6' })).id);
    expect(answer!.work.parts.map(({ name }) => name)).toEqual(['Violin I (I)', 'Viola', 'Violin I (II)']);
  });

  it('further parts are added to a work, and a corrected file is laid over the parts of its own file', async () => {
    const { id } = (await ended((await begin({ 'I.xml': 'Violin I:4,Viola:4' })).id)).answer!.work;
    const added = await ended((await begin({ 'II.xml': 'Violin I:6' }, `/api/works/${id}/files`)).id);
    expect(added).toMatchObject({ kind: 'parts', work: id, step: 'done', answer: { notes: { kept: 0, added: 24, removed: 0 } } });
    const corrected = await ended((await begin({ 'II.xml': 'Violin I:7' }, `/api/works/${id}/editions`)).id);
    expect(corrected).toMatchObject({ kind: 'edition', step: 'done' });
    expect(corrected.answer!.work.parts.map(({ name, measures }) => [name, measures])).toEqual([['Violin I', 4], ['Viola', 4], ['Violin I (II)', 7]]);
    expect(await librarian.begin('/api/works/nowhere/files', { 'x.xml': 'Viola:4' })).toMatchObject({ status: 404, json: { code: 'NOT_THERE' } });
    expect(await librarian.begin(`/api/works/${id}/editions`, { 'a.xml': 'Viola:4', 'b.xml': 'Viola:4' })).toMatchObject({ status: 400, json: { code: 'ONE_FILE' } });
  });
});
