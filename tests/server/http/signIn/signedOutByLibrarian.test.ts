import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { linkFor, tokenOf, type Visitor } from '../../../support/house.ts';
import { openEntrance, type Entrance } from './entering.ts';

let at: Entrance;
let librarian: Visitor;
beforeEach(async () => {
  at = await openEntrance();
  librarian = await at.enter(at.laid.librarian);
});
afterEach(() => at.house.close());

async function byLink(): Promise<Visitor> {
  const visitor = at.house.visitor();
  await visitor.post('/api/sign-in', { token: tokenOf(await linkFor(at.house, at.laid.player)) });
  return visitor;
}
const end = (by: Visitor, person: { id: string }) => by.remove(`/api/people/${person.id}/sessions`);
const status = async (visitor: Visitor) => (await visitor.get('/api/me')).status;

describe('somebody whose tablet is lost', () => {
  it('is signed out everywhere by the librarian, lines and links too, keeps their place, and comes in again', async () => {
    const [one, two] = [await byLink(), await at.enter(at.laid.player)];
    const link = tokenOf(await linkFor(at.house, at.laid.player));
    expect(await end(librarian, at.laid.player)).toMatchObject({ status: 200, json: { ended: 2 } });
    expect([await status(one), await status(two)]).toEqual([401, 401]);
    expect(at.dropped).toHaveLength(2);
    expect((await at.house.visitor().post('/api/sign-in', { token: link })).status).toBe(410);
    expect(await status(await byLink())).toBe(200);
    const { rows } = (await librarian.get('/api/trail?kind=sessionEnded')).json;
    expect(rows.map(({ by, about }: { by: { name: string }; about: { name: string } }) => [by.name, about.name])).toEqual([['Lena Ashgrove', 'Mona Castell']]);
  });

  it('keeps what they opened by a way of their own where it leads to another ensemble too', async () => {
    const other = (await at.house.store.door.addEnsemble('Ebb Ensemble'))!;
    await at.house.store.door.join(other.id, at.laid.player.id, { librarian: false, deputy: false });
    const [bound, own] = [await byLink(), await at.enter(at.laid.player)];
    expect((await end(librarian, at.laid.player)).json).toEqual({ ended: 1 });
    expect([await status(bound), await status(own)]).toEqual([401, 200]);
  });

  it('is not signed out by a player, and a librarian ends their own sign-ins elsewhere', async () => {
    const player = await at.enter(at.laid.player);
    expect((await end(player, at.laid.principal)).status).toBe(403);
    expect(await end(librarian, at.laid.librarian)).toMatchObject({ status: 409, json: { code: 'YOURSELF' } });
    expect([await status(player), await status(librarian)]).toEqual([200, 200]);
  });
});
