import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { CarriedView, WorkView } from '../../../core/agreement/wire/http.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { openHouse, tokenOf, type House, type Visitor } from '../../support/house.ts';
import { inPostgres } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
let house: House;
let librarian: Visitor;
let programme: string;
let firsts: string;
let seconds: string;
beforeAll(async () => {
  database = await createTestDatabase();
  house = await openHouse(await inPostgres(database));
  librarian = await house.signIn(await house.store.people.add('Lena Ashgrove', true));
  firsts = (await librarian.post('/api/sections', { name: 'First violins', instrument: 'violin' })).json.id;
  seconds = (await librarian.post('/api/sections', { name: 'Second violins', instrument: 'violin' })).json.id;
  programme = (await librarian.post('/api/programmes', { title: 'Harbour lights', days: [{ kind: 'concert', date: '2027-05-09' }] })).json.id;
});
afterAll(async () => {
  await house.close();
  await house.store.close();
  await database.drop();
});

const works = `/api/programmes/`;
const laid = (score: string) => librarian.upload(`${works}${programme}/works`, score);

describe('a librarian lays a score on the shelf', () => {
  it('every string part becomes a part, on the section that has its name', async () => {
    const reply = await laid('Violin I:4,Violin II:4,Oboe:4,Viola:5');
    expect(reply.status).toBe(200);
    const work = reply.json.work as WorkView;
    expect(work).toMatchObject({ title: 'Harbour', composer: 'T. Holmwood', fileName: 'harbour.musicxml' });
    expect(work.parts.map((part) => [part.name, part.section?.id ?? null, part.measures])).toEqual([['Violin I', firsts, 4], ['Violin II', seconds, 4], ['Viola', null, 5]]);
    expect(reply.json.notes).toEqual({ kept: 0, added: 52, removed: 0 });
    const shelf = (await librarian.get('/api/shelf')).json;
    expect(shelf.programmes[0]).toMatchObject({ title: 'Harbour lights', days: [{ kind: 'concert', date: '2027-05-09', time: null, words: '' }], works: [work] });
    expect(shelf.people).toHaveLength(1);
  });

  it('a broken file is refused with where and why, and nothing of it is on the shelf', async () => {
    const before = (await librarian.get('/api/shelf')).text;
    expect(await laid('broken')).toMatchObject({ status: 422, json: { code: 'NOT_WELL_FORMED', line: 7, measure: '2', element: 'note' } });
    expect(await laid('Oboe:4,Horn:4')).toMatchObject({ status: 422, json: { code: 'NO_STRING_PARTS' } });
    expect(await librarian.upload(`${works}nowhere/works`, 'Violin I:4')).toMatchObject({ status: 404 });
    expect(await librarian.post(`${works}${programme}/works`, { no: 'file' })).toMatchObject({ status: 400, json: { code: 'NO_FILE' } });
    expect((await librarian.get('/api/shelf')).text).toBe(before);
  });

  it('the source comes back byte for byte under its own name, to be saved and not opened', async () => {
    const bytes = new TextEncoder().encode('Violin I:4');
    const reply = await librarian.upload(`${works}${programme}/works`, bytes, '../../Fjord "süd".musicxml');
    const { headers, text } = await librarian.get(`/api/parts/${reply.json.work.parts[0].id}/source`);
    expect(text).toBe('Violin I:4');
    expect(headers['content-type']).toBe('application/octet-stream');
    expect(String(headers['content-disposition'])).toMatch(/^attachment; filename="[\w .,()-]+"; filename\*=UTF-8''[\w.%-]+$/);
    expect(reply.json.work.fileName).not.toMatch(/[/\\]/);
  });

  it('a corrected file takes the place of the old one; a file that lacks a part is refused', async () => {
    const work = (await laid('Violin I:4,Violin II:4')).json.work as WorkView;
    const url = `/api/works/${work.id}/editions`;
    expect(await librarian.upload(url, 'Violin I:6,Violin II:4,Viola:4', 'second.xml')).toMatchObject({ status: 200, json: { notes: { kept: 32, added: 24, removed: 0 }, work: { id: work.id, fileName: 'second.xml' } } });
    expect(await librarian.upload(url, 'Violin I:6')).toMatchObject({ status: 422, json: { code: 'PART_MISSING', part: 'Violin II' } });
    expect(await librarian.upload('/api/works/nowhere/editions', 'Violin I:6')).toMatchObject({ status: 404 });
    const view = (await librarian.get(`/api/parts/${work.parts[0]!.id}`)).json;
    expect(view.part.measures).toHaveLength(6);
    expect(view).toMatchObject({ id: work.parts[0]!.id, roles: ['librarian'], head: 0, section: { id: firsts } });
    expect((await librarian.get(`/api/parts/${work.parts[0]!.id}/source`)).text).toBe('Violin I:6,Violin II:4,Viola:4');
  });

  it('what a corrected file changed is told place by place, and what became of a mark is kept', async () => {
    const work = (await laid('Violin I:4')).json.work as WorkView;
    const url = `/api/parts/${work.parts[0]!.id}/carried`;
    expect(await librarian.get(url)).toMatchObject({ status: 404, json: { code: 'NOT_THERE' } });
    await librarian.upload(`/api/works/${work.id}/editions`, 'Violin I:6', 'second.xml');
    const told = (await librarian.get(url)).json as CarriedView;
    expect(told).toMatchObject({ revision: 1, fileName: 'harbour.musicxml', settled: {} });
    expect(told.places.some(({ before, after }) => before === null && after !== null && after.measures.length === after.to - after.from + 1)).toBe(true);
    expect((await librarian.get(`${url}/engraving`)).text).toBe('<score-partwise>P1 4</score-partwise>');
    expect((await librarian.post(url, { revision: 1, key: 'ink x', how: 'leftOut' })).status).toBe(200);
    expect(((await librarian.get(url)).json as CarriedView).settled['ink x']).toMatchObject({ how: 'leftOut', name: 'Lena Ashgrove' });
    await librarian.upload(`/api/works/${work.id}/editions`, 'Violin I:5', 'third.xml');
    expect((await librarian.get(url)).json).toMatchObject({ revision: 2, fileName: 'second.xml', earlier: [{ revision: 2 }, { revision: 1, fileName: 'harbour.musicxml' }], settled: { 'ink x': { how: 'leftOut' } } });
    expect((await librarian.get(`${url}?revision=1`)).json).toMatchObject({ revision: 1, fileName: 'harbour.musicxml' });
    expect((await librarian.get(`${url}?revision=3`)).status).toBe(404);
    expect((await librarian.post(url, { revision: 9, key: 'ink x', how: 'put' })).status).toBe(404);
    expect((await house.visitor().get(url)).status).toBe(401);
  });

  it('a part is put on other stands, or on none', async () => {
    const part = (await laid('Violin I:4')).json.work.parts[0].id as string;
    expect((await librarian.put(`/api/parts/${part}/section`, { section: seconds })).status).toBe(200);
    expect((await librarian.get(`/api/parts/${part}`)).json.section.id).toBe(seconds);
    expect((await librarian.put(`/api/parts/${part}/section`, { section: null })).status).toBe(200);
    expect((await librarian.put(`/api/parts/${part}/section`, { section: 'nowhere' })).status).toBe(404);
  });
});

describe('a librarian seats a section', () => {
  it('people are added, seated, led, and come in by their link', async () => {
    const added = (await librarian.post('/api/people', { name: '  Ilya Brandt ' })).json;
    expect(added.person).toMatchObject({ name: 'Ilya Brandt', librarian: false });
    const plan = { seats: [{ seat: '1o', person: added.person.id }, { seat: '1i', person: null }], principal: added.person.id };
    expect((await librarian.put(`/api/sections/${firsts}/seating`, plan)).json).toMatchObject({ seats: [{ seat: '1o', person: { name: 'Ilya Brandt' } }, { seat: '1i', person: null }], principal: { name: 'Ilya Brandt' } });
    const visitor = house.visitor();
    await visitor.post('/api/sign-in', { token: tokenOf(added.link) });
    expect((await visitor.get('/api/me')).json.memberships).toEqual([{ section: firsts, sectionName: 'First violins', role: 'principal', seat: '1o' }]);
    expect((await visitor.get('/api/shelf')).json.people).toEqual([]);
    const again = (await librarian.post(`/api/people/${added.person.id}/link`)).json;
    expect((await house.visitor().post('/api/sign-in', { token: tokenOf(again.link) })).json.id).toBe(added.person.id);
    expect((await visitor.put(`/api/sections/${firsts}/settings`, { stagger: 0.5 })).json.settings).toEqual({ stagger: 0.5 });
    expect((await visitor.put(`/api/sections/${seconds}/settings`, {})).status).toBe(403);
    for (const [path, body] of [['/api/people', { name: 'X' }], ['/api/sections', { name: 'X', instrument: 'cello' }], ['/api/programmes', { title: 'X' }], [`/api/people/${added.person.id}/link`, {}]] as const) {
      expect((await visitor.post(path, body)).json).toMatchObject({ code: 'LIBRARIAN_ONLY' });
    }
    expect((await visitor.upload(`${works}${programme}/works`, 'Violin I:4')).status).toBe(403);
    expect((await visitor.put(`/api/sections/${firsts}/seating`, plan)).status).toBe(403);
  });

  it('what does not fit is refused with the field and what to do', async () => {
    expect(await librarian.post('/api/sections', { name: 'First violins', instrument: 'violin' })).toMatchObject({ status: 409, json: { code: 'NAME_TAKEN' } });
    expect(await librarian.post('/api/sections', { name: 'Harps', instrument: 'harp' })).toMatchObject({ status: 400, json: { code: 'BAD_INPUT', text: expect.stringContaining('"instrument"') } });
    expect((await librarian.post('/api/people', { name: 'a\u0000b' })).status).toBe(400);
    expect((await librarian.post('/api/people', { name: '\ud800' })).status).toBe(400);
    expect((await librarian.post('/api/programmes', { title: '   ' })).status).toBe(400);
    expect((await librarian.post('/api/people/nobody/link')).status).toBe(404);
    expect((await librarian.put(`/api/sections/${firsts}/seating`, { seats: [{ seat: '1o', person: 'nobody' }], principal: null })).status).toBe(404);
    expect((await librarian.put(`/api/sections/${firsts}/seating`, { seats: [{ seat: '1o', person: null }, { seat: '1o', person: null }], principal: null })).json).toMatchObject({ code: 'SEATED_TWICE' });
    expect((await librarian.get('/api/parts/%00')).status).toBe(400);
    expect((await librarian.get(`/api/parts/${'x'.repeat(90)}`)).status).toBe(400);
    expect((await librarian.get('/api/nowhere')).json).toMatchObject({ code: 'NOT_THERE' });
  });
});

describe('a fault of ours', () => {
  it('is logged under a name that the reader is told, and nothing else', async () => {
    const broken = await openHouse({ ...house.store, sections: { ...house.store.sections, all: () => Promise.reject(new Error('secret of the house')) } });
    const visitor = await broken.signIn(await house.store.people.add('Mona Castell', false));
    const reply = await visitor.get('/api/shelf');
    expect(reply).toMatchObject({ status: 500, json: { code: 'FAULT', incident: expect.stringMatching(/^\w+ \w+ \d{4}$/) } });
    expect(reply.text).not.toContain('secret');
    expect(broken.lines[0]).toContain(reply.json.incident);
    expect(broken.lines[0]).toContain('secret of the house');
    await broken.close();
  });

  it('a database that is away is said to be away, to be asked again', async () => {
    const away = Object.assign(new Error('connect ENOENT'), { code: 'ENOENT' });
    const broken = await openHouse({ ...house.store, sections: { ...house.store.sections, all: () => Promise.reject(away) } }, { ping: () => Promise.reject(away) });
    const visitor = await broken.signIn(await house.store.people.add('Jon Ferrow', false));
    expect(await visitor.get('/api/shelf')).toMatchObject({ status: 503, headers: { 'retry-after': '1' }, json: { code: 'SHELVES_AWAY' } });
    expect(await visitor.get('/api/ready')).toMatchObject({ status: 503, json: { ready: false } });
    expect(await visitor.get('/api/health')).toMatchObject({ status: 200, json: { well: true } });
    expect(broken.lines).toEqual([]);
    await broken.close();
  });
});
