import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import type { BroughtIn } from '../../../core/archive/wire.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import * as documents from '../../../server/jobs/documents.ts';
import { openHouse, type Visitor } from '../../support/house.ts';
import { note, scoreText } from '../../support/scoreText.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

/** Violins and violas with the same six measures each. */
const SCORE = (() => {
  const [violin, viola] = ['Violin', 'Viola'].map((name) => scoreText(['C5', 'D5', 'E5', 'F5', 'G5', 'A5'].map((pitch) => note(pitch, 16)), { name }));
  const listed = /<score-part id="P1">.*?<\/score-part>/.exec(viola!)![0].replace('P1', 'P2');
  const part = /<part id="P1">[^]*?<\/part>/.exec(viola!)![0].replace('P1', 'P2');
  return violin!.replace('</part-list>', `${listed}</part-list>`).replace('</score-partwise>', `${part}</score-partwise>`);
})();

it('whoever leads a section brings the marks to it alone and hears of no other; the librarian lays all of them', async () => {
  const store = await inMemory();
  const house = await openHouse(store, { documents });
  const librarian = await house.signIn((await store.people.add('Lena Ashgrove', true))!);
  const principals: Visitor[] = [];
  for (const [name, section, instrument] of [['Ilya Brandt', 'Violin', 'violin'], ['Mona Varga', 'Viola', 'viola']] as const) {
    const person = (await store.people.add(name, false))!;
    const { id } = (await store.sections.add(section, instrument))!;
    await store.sections.seat(id, { seats: seatsFor(2).map((seat, i) => ({ seat, person: i ? null : person.id })), principal: person.id });
    principals.push(await house.signIn(person));
  }
  const { id: programme } = await store.library.addProgramme({ title: 'Spring', season: '', conductor: '', days: [], deadlines: {} });
  const lay = async () => (await librarian.upload(`/api/programmes/${programme}/works`, SCORE)).json.work as { id: string; parts: { id: string; name: string }[] };
  const first = await lay();
  for (const [i, { id }] of first.parts.entries()) {
    const proposal = randomUUID();
    const { part } = (await librarian.get(`/api/parts/${id}`)).json;
    const say = (name: string, input: unknown) => principals[i]!.post(`/api/parts/${id}/operations/${name}`, { operation: randomUUID(), input });
    await say('propose', { id: proposal, from: 2, to: 2, seats: 'all', why: 'So', marks: [{ note: part.measures[1].notes[0].id, value: { kind: 'bow', bow: 'up' } }] });
    expect((await say('adopt', { proposal, revision: 1, why: '' })).status).toBe(200);
  }
  const [{ id: set }] = (await librarian.post(`/api/works/${first.id}/keep`, { ensemble: 'Town players', conductor: 'R. Vane', season: '2026/27' })).json;
  const again = await lay();
  const bring = async (who: Visitor, ink: boolean) => ((await who.post(`/api/works/${again.id}/bring-in`, { id: randomUUID(), set, ink })).json as BroughtIn).parts.map(({ name, slips, inked, refusal }) => [name, slips, inked, refusal]);
  expect(await bring(principals[0]!, true)).toEqual([['Violin', 1, 1, null]]);
  expect(await bring(principals[1]!, false)).toEqual([['Viola', 1, 0, null]]);
  expect(await bring(librarian, false)).toEqual([['Violin', 1, 0, null], ['Viola', 1, 0, null]]);
  await house.close();
});
