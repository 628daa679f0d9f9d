import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { seatsFor } from '../../../core/music/seat.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

let house: House;
let librarian: Visitor;
let first: Visitor;
let second: Visitor;
let work: string;
let [one, two]: string[] = [];

beforeAll(async () => {
  const store = await inMemory();
  house = await openHouse(store);
  librarian = await house.signIn((await store.people.add('Lena', true))!);
  const leaders = await Promise.all(['Ilya', 'Mona'].map(async (name, i) => {
    const person = (await store.people.add(name, false))!;
    const section = (await store.sections.add(`Violin ${'I'.repeat(i + 1)}`, 'violin'))!.id;
    await store.sections.seat(section, { seats: seatsFor(2).map((seat, at) => ({ seat, person: at ? null : person.id })), principal: person.id });
    return house.signIn(person);
  }));
  [first, second] = leaders as [Visitor, Visitor];
  const programme = await store.library.addProgramme({ title: 'Spring', season: '', conductor: '', days: [], deadlines: {} });
  const { json } = await librarian.upload(`/api/programmes/${programme.id}/works`, 'Violin I:4,Violin II:4');
  work = json.work.id;
  [one, two] = json.work.parts.map(({ id }: { id: string }) => id);
  const id = randomUUID();
  const say = (name: string, input: unknown) => first.post(`/api/parts/${one}/operations/${name}`, { operation: randomUUID(), input });
  await say('propose', { id, from: 2, to: 2, seats: 'all', why: 'Lighter', marks: [{ note: 'P1n6', value: { kind: 'bow', bow: 'up' } }] });
  expect(await say('adopt', { proposal: id, revision: 1, why: '' })).toMatchObject({ status: 200 });
});
afterAll(() => house.close());

const look = async (visitor: Visitor, from: string) => (await visitor.get(`/api/works/${work}/travel?from=${from}`)).json;

describe('bows carried to the sections that play the same', () => {
  it('are offered passage by passage, and none where nothing is bowed', async () => {
    expect((await look(librarian, one!)).passages).toMatchObject([{ part: two, section: 'Violin II', likeness: 'unison', from: 1, to: 4, numbers: ['0', '3'], marks: 1 }]);
    expect((await look(librarian, two!)).passages).toEqual([]);
    expect(await librarian.get(`/api/works/${work}/travel?from=nobody`)).toMatchObject({ status: 404 });
  });

  it('are laid by the librarian as slips that name their source; the principal decides', async () => {
    const { passages } = await look(librarian, one!);
    const asking = { id: randomUUID(), from: one, keys: passages.map(({ key }: { key: string }) => key) };
    expect((await librarian.post(`/api/works/${work}/travel`, asking)).json.parts).toMatchObject([{ id: two, slips: 1, inked: 0, marks: 1, refusal: null }]);
    await librarian.post(`/api/works/${work}/travel`, asking);
    const { proposals } = (await second.get(`/api/parts/${two}`)).json.state;
    expect(Object.values(proposals)).toMatchObject([{ why: 'Bowed as in Violin I, who play the same here', status: 'open', proposed: { name: 'Lena' }, marks: [{ note: 'P2n6', value: { kind: 'bow', bow: 'up' } }] }]);
    const id = Object.keys(proposals)[0];
    expect(await second.post(`/api/parts/${two}/operations/adopt`, { operation: randomUUID(), input: { proposal: id, revision: 1, why: 'Alike' } })).toMatchObject({ status: 200 });
    expect((await look(librarian, one!)).passages).toEqual([]);
  });

  it('are laid on no other section’s stand by somebody who neither leads it nor keeps the library', async () => {
    const id = randomUUID();
    await first.post(`/api/parts/${one}/operations/propose`, { operation: randomUUID(), input: { id, from: 3, to: 3, seats: 'all', why: 'Heavier', marks: [{ note: 'P1n9', value: { kind: 'bow', bow: 'down' } }] } });
    await first.post(`/api/parts/${one}/operations/adopt`, { operation: randomUUID(), input: { proposal: id, revision: 1, why: '' } });
    const keys = (await look(first, one!)).passages.map(({ key }: { key: string }) => key);
    expect(keys).toHaveLength(1);
    expect((await first.post(`/api/works/${work}/travel`, { id: randomUUID(), from: one, keys })).json.parts).toMatchObject([{ slips: 0, refusal: expect.stringContaining('principal and the librarian') }]);
  });
});
