import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Visitor } from '../../../support/house.ts';
import { linkIn, openEntrance, type Entrance } from './entering.ts';

let at: Entrance;
let keeper: Visitor;
beforeEach(async () => {
  at = await openEntrance();
  const other = (await at.house.store.door.addEnsemble('Ebb Ensemble'))!;
  keeper = await at.enter(await at.house.store.installation.of(other.id).people.add('Nils Corvander', true));
});
afterEach(() => at.house.close());

const invite = async (): Promise<string> => {
  const { json } = await keeper.post('/api/people', { name: 'M. Castell', librarian: false, deputy: false });
  expect(json.link).toContain('&invited');
  return linkIn(json.link);
};

describe('an invitation to one more ensemble', () => {
  it('is taken up by who is signed in: both ensembles are theirs, the new one lies open, and its people know them by their own name', async () => {
    const player = await at.enter(at.laid.player);
    const { json } = await player.post('/api/me/invitations', { token: await invite() });
    expect(json).toMatchObject({ id: at.laid.player.id, name: 'Mona Castell', ensemble: { name: 'Ebb Ensemble' } });
    expect(json.ensembles).toHaveLength(2);
    expect((await player.get('/api/shelf')).json.programmes).toEqual([]);
    expect((await keeper.get('/api/shelf')).json.people.map(({ name }: { name: string }) => name).sort()).toEqual(['Mona Castell', 'Nils Corvander']);
    expect((await keeper.get('/api/trail')).json.rows.map(({ kind, by }: { kind: string; by: { name: string } | null }) => [kind, by?.name])).toContainEqual(['signedIn', 'Mona Castell']);
    await player.put('/api/me/ensemble', { ensemble: at.house.store.ensemble });
    expect((await player.get('/api/shelf')).json.programmes).toHaveLength(1);
  });

  it('once, and not by who came by a librarian’s link, whose sign-in reaches one ensemble alone', async () => {
    const token = await invite();
    const [player, bound] = [await at.enter(at.laid.player), at.house.visitor()];
    const { json } = await (await at.enter(at.laid.librarian)).post(`/api/people/${at.laid.guest.id}/link`);
    await bound.post('/api/sign-in', { token: linkIn(json.link) });
    expect(await bound.post('/api/me/invitations', { token })).toMatchObject({ status: 409, json: { code: 'BOUND_SIGN_IN' } });
    expect((await player.post('/api/me/invitations', { token })).status).toBe(200);
    expect(await player.post('/api/me/invitations', { token })).toMatchObject({ status: 410, json: { code: 'LINK_USED' } });
    expect(await player.post('/api/me/invitations', { token: await invite() })).toMatchObject({ status: 409, json: { code: 'HERE_ALREADY' } });
    expect((await at.house.visitor().post('/api/me/invitations', { token })).status).toBe(401);
  });

  it('taken up by nobody it opens as it ever did', async () => {
    const visitor = at.house.visitor();
    expect((await visitor.post('/api/sign-in', { token: await invite() })).json).toMatchObject({ name: 'M. Castell' });
  });
});
