import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openLaidHouse, type LaidHouse } from '../../support/laidHouse.ts';
import type { House, Visitor } from '../../support/house.ts';
import { oneMark, type LaidOut } from '../../support/laidOut.ts';

let opened: LaidHouse;
let house: House;
let laid: LaidOut;
let people: Record<'librarian' | 'principal' | 'player' | 'guest', Visitor>;
beforeAll(async () => {
  opened = await openLaidHouse();
  ({ house, laid } = opened);
  people = { librarian: await house.signIn(laid.librarian), principal: await house.signIn(laid.principal), player: await house.signIn(laid.player), guest: await house.signIn(laid.guest) };
});
afterAll(() => opened.close());

const own = () => `/api/programmes/${laid.programme}`;
const seating = () => `${own()}/sections/${laid.section}/seating`;
const ask = (visitor: Visitor, name: string, input: unknown) => visitor.post(`/api/parts/${laid.part}/operations/${name}`, { operation: randomUUID(), input });
const partNow = async () => (await people.guest.get(`${own()}/overview`)).json.parts.find(({ id }: { id: string }) => id === laid.part);

describe('a programme, over HTTP', () => {
  it('is written anew by the librarian alone; its days come back in order', async () => {
    const days = [{ kind: 'concert', date: '2027-03-05' }, { kind: 'rehearsal', date: '2027-03-02', time: '14:00' }, { kind: 'rehearsal', date: '2027-03-02', time: '10:00', words: ' Hall 2 ' }];
    const body = { title: 'Spring', season: '2026/27', conductor: 'Vera Lindqvist', days, deadlines: { withPrincipal: null, roundSection: '2027-02-10' } };
    const reply = await people.librarian.put(own(), body);
    expect(reply).toMatchObject({ status: 200, json: { id: laid.programme, season: '2026/27', works: [{ id: laid.work }], seatings: [] } });
    expect(reply.json.days.map(({ date, time, words }: Record<string, string>) => [date, time, words])).toEqual([['2027-03-02', '10:00', 'Hall 2'], ['2027-03-02', '14:00', ''], ['2027-03-05', null, '']]);
    expect((await people.guest.get('/api/shelf')).json.programmes.find(({ id }: { id: string }) => id === laid.programme)).toEqual(reply.json);
    expect(await people.principal.put(own(), body)).toMatchObject({ status: 403, json: { code: 'LIBRARIAN_ONLY' } });
    expect((await people.librarian.put('/api/programmes/nowhere', body)).status).toBe(404);
    for (const wrong of [{ ...body, days: [{ kind: 'party', date: '2027-03-02' }] }, { ...body, days: [{ kind: 'concert', date: '2027-02-30' }] }, { ...body, days: [{ kind: 'concert', date: '2027-03-02', time: '24:00' }] }, { ...body, deadlines: { pulled: '2027-03-02' } }, { ...body, conductor: 'a\u0000b' }, { ...body, more: 1 }]) {
      expect(await people.librarian.put(own(), wrong)).toMatchObject({ status: 400, json: { code: 'BAD_INPUT' } });
    }
  });

  it('says what is due of each part, how late it is on the library’s day, and who is waited for', async () => {
    const { today } = (await people.guest.get(`${own()}/overview`)).json;
    const after = (days: number) => new Date(Date.parse(today) + days * 86_400_000).toISOString().slice(0, 10);
    await people.librarian.put(own(), { title: 'Spring', days: [{ kind: 'rehearsal', date: after(20) }], deadlines: { withPrincipal: null, roundSection: after(-2) } });
    expect(await partNow()).toEqual({ id: laid.part, due: { stage: 'roundSection', date: after(-2), days: -2 }, waitedFor: { turn: 'principal', principal: { id: laid.principal.id, name: laid.principal.name } }, changed: 0 });
    const id = randomUUID();
    await ask(people.principal, 'propose', oneMark(id));
    await ask(people.librarian, 'moveOn', { stage: 'roundSection' });
    expect(await partNow()).toMatchObject({ due: { stage: 'inkedIn', date: after(-1), days: -1 }, waitedFor: { turn: 'players', players: [{ name: laid.player.name }] } });
    await ask(people.player, 'castVote', { proposal: id, revision: 1, measure: 1, vote: 'for' });
    expect((await partNow()).waitedFor.turn).toBe('principal');
    await ask(people.principal, 'adopt', { proposal: id, revision: 1, why: '' });
    await ask(people.librarian, 'moveOn', { stage: 'onStands' });
    expect(await partNow()).toEqual({ id: laid.part, due: null, waitedFor: { turn: 'nobody' }, changed: 0 });
    expect((await people.guest.get('/api/programmes/nowhere/overview')).status).toBe(404);
  });

  it('a late change is told by measure and seat as soon as it is inked in', async () => {
    const since = async () => (await people.player.get(`/api/parts/${laid.part}/since`)).json;
    expect(await since()).toEqual({ at: expect.stringMatching(/^20\d\d-/), changes: [] });
    const id = randomUUID();
    await ask(people.principal, 'propose', { ...oneMark(id), seats: ['1i'], marks: [{ note: 'P1n1', value: { kind: 'finger', finger: 3 } }] });
    expect((await since()).changes).toEqual([]);
    await ask(people.principal, 'adopt', { proposal: id, revision: 1, why: '' });
    expect((await since()).changes).toEqual([{ measure: 1, number: '0', note: 'P1n1', position: 1, seats: ['1i'], gone: [{ kind: 'finger', finger: 1 }], fresh: [{ kind: 'finger', finger: 3 }] }]);
    expect(await partNow()).toMatchObject({ changed: 1 });
    await ask(people.librarian, 'moveOn', { stage: 'printed' });
    expect(await since()).toEqual({ at: null, changes: [] });
  });

  it('a deputy reads, plays and votes in that programme alone; who is away does not; then all sit as usual again', async () => {
    const plan = { seats: [{ seat: '1o', person: laid.principal.id }, { seat: '1i', person: laid.guest.id }], principal: laid.principal.id };
    expect(await people.principal.put(seating(), plan)).toMatchObject({ status: 403, json: { code: 'LIBRARIAN_ONLY' } });
    expect((await people.librarian.put(seating(), plan)).json.seatings).toMatchObject([{ section: laid.section, seats: [{ seat: '1o' }, { seat: '1i', person: { name: laid.guest.name } }] }]);
    expect((await people.guest.get(`/api/parts/${laid.part}`)).json).toMatchObject({ roles: ['player'], seat: '1i', section: { id: laid.section, seats: [{ seat: '1o' }, { seat: '1i' }] } });
    expect((await people.player.get(`/api/parts/${laid.part}`)).json).toMatchObject({ roles: [], seat: null });
    const id = randomUUID();
    expect((await ask(people.guest, 'propose', oneMark(id))).status).toBe(200);
    expect((await ask(people.player, 'castVote', { proposal: id, revision: 1, measure: 1, vote: 'for' })).json).toMatchObject({ ok: false, code: 'NOT_YOUR_ROLE' });
    expect((await ask(people.principal, 'castVote', { proposal: id, revision: 1, measure: 1, vote: 'for' })).json.ok).toBe(true);
    expect((await people.librarian.get(`/api/parts/${laid.part}/export?for=2o`)).json).toMatchObject({ code: 'NO_SUCH_SEAT' });
    const { head } = (await people.guest.get(`/api/parts/${laid.part}/revisions`)).json;
    const { marks } = (await people.guest.get(`/api/parts/${laid.part}/revisions/${head}`)).json;
    expect(marks.filter(({ note }: { note: string }) => note === 'P1n1')).toMatchObject([{ value: { finger: 1 }, seats: ['1o'] }, { value: { finger: 3 }, seats: ['1i'] }]);
    const elsewhere = (await people.librarian.post('/api/programmes', { title: 'Autumn' })).json.id;
    const other = (await people.librarian.upload(`/api/programmes/${elsewhere}/works`, 'Violin I:4')).json.work.parts[0].id;
    await people.librarian.put(`/api/parts/${other}/section`, { section: laid.section });
    expect([(await people.guest.get(`/api/parts/${other}`)).json.roles, (await people.player.get(`/api/parts/${other}`)).json.roles]).toEqual([[], ['player']]);
    expect(await people.librarian.remove(seating())).toMatchObject({ status: 200, json: { seatings: [] } });
    expect((await people.guest.get(`/api/parts/${laid.part}`)).json).toMatchObject({ roles: [], seat: null });
    expect((await ask(people.player, 'castVote', { proposal: id, revision: 1, measure: 1, vote: 'for' })).json.ok).toBe(true);
  });

  it('a principal for one programme leads it: inks in, exports, and is nobody’s principal elsewhere', async () => {
    await people.librarian.put(seating(), { seats: [{ seat: '1o', person: laid.guest.id }, { seat: '1i', person: laid.player.id }], principal: laid.guest.id });
    const id = randomUUID();
    await ask(people.player, 'propose', { ...oneMark(id), marks: [{ note: 'P1n1', value: { kind: 'bow', bow: 'up' } }] });
    expect((await ask(people.principal, 'adopt', { proposal: id, revision: 1, why: '' })).status).toBe(403);
    expect((await people.principal.get(`/api/parts/${laid.part}/export`)).status).toBe(403);
    expect((await ask(people.guest, 'adopt', { proposal: id, revision: 1, why: '' })).status).toBe(200);
    expect((await people.guest.get(`/api/parts/${laid.part}/export`)).status).toBe(200);
    expect((await people.guest.put(`/api/sections/${laid.section}/settings`, {})).status).toBe(403);
    await people.librarian.remove(seating());
  });

  it('a plan that does not fit changes nothing, and says what to do', async () => {
    const twice = { seats: [{ seat: '1o', person: laid.guest.id }, { seat: '1i', person: laid.guest.id }], principal: null };
    expect((await people.librarian.put(seating(), twice)).json).toMatchObject({ code: 'SEATED_TWICE' });
    expect((await people.librarian.put(`${own()}/sections/nowhere/seating`, { seats: [], principal: null })).status).toBe(404);
    expect((await people.librarian.remove(`/api/programmes/nowhere/sections/${laid.section}/seating`)).status).toBe(404);
    expect(((await people.librarian.get('/api/shelf')).json.programmes as { id: string; seatings: unknown[] }[]).find(({ id }) => id === laid.programme)!.seatings).toEqual([]);
  });
});
