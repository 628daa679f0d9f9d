import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openProvider } from '../../../../server/signIn/identityProvider.ts';
import { linkFor, tokenOf, type Visitor } from '../../../support/house.ts';
import { CLIENT, TestProvider } from '../../../support/provider.ts';
import { linkIn, openEntrance, type Entrance } from './entering.ts';

const BACK = 'http://localhost/api/sign-in/identity/back';
let provider: TestProvider;
beforeAll(async () => (provider = await TestProvider.open(BACK)));
afterAll(() => provider.close());
const opened = () => openProvider({ issuer: provider.issuer, ...CLIENT, name: 'Varnholm House' });

describe('the orchestra’s own sign-in', () => {
  let at: Entrance;
  beforeEach(async () => {
    at = await openEntrance({ identity: opened() });
    provider.who = 'mona-17';
  });
  afterEach(() => at.house.close());

  const path = ({ pathname, search }: URL) => pathname + search;
  /** There and back again; gives where the library sends the browser then. */
  async function goThrough(visitor: Visitor, start: string, body: object = {}, change: (back: URL) => void = () => {}): Promise<string> {
    const { go } = (await visitor.post(start, body)).json;
    const back = await provider.visit(go);
    change(back);
    const reply = await visitor.get(path(back));
    expect(reply.status).toBe(303);
    return String(reply.headers.location);
  }
  const enter = (visitor: Visitor, change?: (back: URL) => void) => goThrough(visitor, '/api/sign-in/identity', {}, change);
  const isIn = async (visitor: Visitor) => (await visitor.get('/api/me')).status === 200;
  async function bound() {
    const player = await at.enter(at.laid.player);
    expect(await goThrough(player, '/api/me/identity')).toBe('/shelf');
    return player;
  }

  it('is offered by its name', async () => {
    expect((await at.house.visitor().get('/api/sign-in')).json).toEqual({ letter: true, identity: 'Varnholm House' });
  });

  it('brings nobody in whom the library does not know by it, whatever their address there', async () => {
    const visitor = at.house.visitor();
    expect(await enter(visitor)).toBe('/sign-in?trouble=IDENTITY_UNKNOWN');
    expect(await isIn(visitor)).toBe(false);
  });

  it('brings in whoever let it know them, to all their ensembles, with a new token', async () => {
    const player = await bound();
    expect((await player.get('/api/me/sign-in')).json).toMatchObject({ identity: true });
    const visitor = at.house.visitor();
    expect(await enter(visitor)).toBe('/sign-in?came');
    expect((await visitor.get('/api/me')).json.id).toBe(at.laid.player.id);
    expect((await visitor.get('/api/me/sign-in')).json.sessions.find((one: { here: boolean }) => one.here)).toMatchObject({ way: 'identity' });
  });

  it('knows somebody new from the first use of their invitation, which is used up by it', async () => {
    const { json } = await (await at.enter(at.laid.librarian)).post('/api/people', { name: 'Ruth Ambler' });
    provider.who = 'ruth-4';
    const visitor = at.house.visitor();
    expect(await goThrough(visitor, '/api/sign-in/identity', { invitation: linkIn(json.link) })).toBe('/sign-in?came');
    expect((await visitor.get('/api/me')).json.name).toBe('Ruth Ambler');
    expect((await at.house.visitor().post('/api/sign-in', { token: linkIn(json.link) })).status).toBe(410);
    expect(await enter(at.house.visitor())).toBe('/sign-in?came');
  });

  it('is not bound by a link that a librarian made for somebody who is here already', async () => {
    await bound();
    provider.who = 'the-librarian';
    const token = tokenOf(await linkFor(at.house, at.laid.player));
    expect(await goThrough(at.house.visitor(), '/api/sign-in/identity', { invitation: token })).toBe('/sign-in?trouble=BY_LINK');
    expect(await enter(at.house.visitor())).toBe('/sign-in?trouble=IDENTITY_UNKNOWN');
  });

  it('that knows somebody brings in nobody else, and uses up no invitation', async () => {
    await bound();
    const guest = await at.enter(at.laid.guest);
    expect(await goThrough(guest, '/api/me/identity')).toBe('/sign-in?trouble=IDENTITY_TAKEN');
    const { json } = await (await at.enter(at.laid.librarian)).post('/api/people', { name: 'Ruth Ambler' });
    expect(await goThrough(at.house.visitor(), '/api/sign-in/identity', { invitation: linkIn(json.link) })).toBe('/sign-in?trouble=IDENTITY_TAKEN');
    expect((await at.house.visitor().post('/api/sign-in', { token: linkIn(json.link) })).status).toBe(200);
  });

  it('is forgotten when its owner says so, who must have proved lately who they are', async () => {
    const player = await bound();
    at.pass(11);
    expect((await player.remove('/api/me/identity')).json).toMatchObject({ code: 'PROVE_FIRST' });
    expect((await player.post('/api/me/identity', {})).json).toMatchObject({ code: 'PROVE_FIRST' });
    const again = at.house.visitor();
    await enter(again);
    expect((await again.remove('/api/me/identity')).json).toMatchObject({ identity: false });
    expect(await enter(at.house.visitor())).toBe('/sign-in?trouble=IDENTITY_UNKNOWN');
  });

  it.each<[string, (back: URL) => void]>([
    ['another state', ({ searchParams }) => searchParams.set('state', 'another')],
    ['no state', ({ searchParams }) => searchParams.delete('state')],
    ['a code that was made up', ({ searchParams }) => searchParams.set('code', 'made-up')],
    ['no code', ({ searchParams }) => searchParams.delete('code')],
    ['the name of another issuer', ({ searchParams }) => searchParams.set('iss', 'https://elsewhere.example')],
    ['no issuer, where the provider always names itself', ({ searchParams }) => searchParams.delete('iss')],
    ['a refusal of the provider', ({ searchParams }) => (searchParams.delete('code'), searchParams.set('error', 'access_denied'))],
  ])('brings nobody in who comes back with %s', async (_, change) => {
    await bound();
    const visitor = at.house.visitor();
    expect(await enter(visitor, change)).toBe('/sign-in?trouble=NOT_VOUCHED');
    expect(await isIn(visitor)).toBe(false);
  });

  it('brings nobody in twice by one way back, nor in another browser, nor too late', async () => {
    await bound();
    const visitor = at.house.visitor();
    const { go } = (await visitor.post('/api/sign-in/identity', {})).json;
    const errand = visitor.cookie();
    const back = path(await provider.visit(go));
    expect((await at.house.visitor().get(back)).headers.location).toBe('/sign-in?trouble=ERRAND_OVER');
    expect((await visitor.get(back)).headers.location).toBe('/sign-in?came');
    const replayed = await at.house.visitor().get(back, { cookie: errand });
    expect(replayed.headers.location).toBe('/sign-in?trouble=ERRAND_OVER');
    expect(String(replayed.headers['set-cookie'])).not.toMatch(/bowline=\w/);
    const late = at.house.visitor();
    const second = await provider.visit((await late.post('/api/sign-in/identity', {})).json.go);
    at.pass(10);
    expect((await late.get(path(second))).headers.location).toBe('/sign-in?trouble=ERRAND_OVER');
  });

  it('takes no code that was given to another browser’s errand', async () => {
    await bound();
    const [victim, thief] = [at.house.visitor(), at.house.visitor()];
    const theirs = await provider.visit((await victim.post('/api/sign-in/identity', {})).json.go);
    expect(await enter(thief, ({ searchParams }) => searchParams.set('code', theirs.searchParams.get('code')!))).toBe('/sign-in?trouble=NOT_VOUCHED');
    expect(await isIn(thief)).toBe(false);
  });

  it('is bound to the sign-in that began it: somebody else’s cookie in between binds nothing', async () => {
    const player = await at.enter(at.laid.player);
    const back = await provider.visit((await player.post('/api/me/identity', {})).json.go);
    const errand = player.cookie().split('; ').find((one) => one.startsWith('bowline-errand='))!;
    const guest = await at.enter(at.laid.guest);
    const reply = await at.house.visitor().get(path(back), { cookie: `${guest.cookie()}; ${errand}` });
    expect(reply.headers.location).toBe('/sign-in?trouble=ERRAND_OVER');
    expect(await enter(at.house.visitor())).toBe('/sign-in?trouble=IDENTITY_UNKNOWN');
  });

  it('that does not answer is said so, and the library goes on', async () => {
    const away = await openEntrance({ identity: openProvider({ issuer: 'http://127.0.0.1:9', ...CLIENT, name: 'Varnholm House' }) });
    expect(await away.house.visitor().post('/api/sign-in/identity', {})).toMatchObject({ status: 502, json: { code: 'IDENTITY_AWAY' } });
    expect((await away.house.visitor().get('/api/health')).status).toBe(200);
    await away.house.close();
  });

  it('leaves no token, code or secret in a line the server writes', async () => {
    await bound();
    await enter(at.house.visitor(), ({ searchParams }) => searchParams.set('code', 'made-up-code-of-a-test'));
    expect(at.house.lines.join()).not.toMatch(/made-up-code|a-secret-of-the-two|eyJ/);
  });
});

describe('what the provider says', () => {
  const SECRET = 'kept-by-one-browser';

  it('is asked for by code, with a challenge, a state and a nonce, and for nothing but who it is', async () => {
    const { searchParams } = new URL(await opened().begin(SECRET, BACK));
    expect(Object.fromEntries(searchParams)).toMatchObject({ response_type: 'code', client_id: 'bowline', scope: 'openid', code_challenge_method: 'S256', redirect_uri: BACK });
    const proofs = ['code_challenge', 'state', 'nonce'].map((name) => searchParams.get(name)!);
    expect(new Set(proofs).size).toBe(3);
    for (const proof of proofs) expect(proof).toMatch(/^[\w-]{43}$/);
    expect(searchParams.toString()).not.toContain(SECRET);
  });

  it('is not taken where its nonce is another', async () => {
    const door = opened();
    const go = new URL(await door.begin(SECRET, BACK));
    go.searchParams.set('nonce', 'planted');
    await expect(door.finish(SECRET, await provider.visit(go.href))).rejects.toMatchObject({ code: 'OAUTH_JWT_CLAIM_COMPARISON_FAILED', cause: { message: expect.stringContaining('nonce') } });
  });

  it('is not taken where another challenge was sent', async () => {
    const door = opened();
    const go = new URL(await door.begin(SECRET, BACK));
    go.searchParams.set('code_challenge', 'E9Melhoa2OwvFrEMTJguCHaoeK1t8URWbuGJSstw-cM');
    await expect(door.finish(SECRET, await provider.visit(go.href))).rejects.toThrow();
  });

  it('is taken once: a code replayed is refused', async () => {
    const door = opened();
    const back = await provider.visit(await door.begin(SECRET, BACK));
    expect(await door.finish(SECRET, back)).toEqual({ issuer: provider.issuer, subject: provider.who });
    await expect(door.finish(SECRET, back)).rejects.toThrow();
  });

  it('is not even asked where it describes itself as another than was set', async () => {
    const foreign = openProvider({ issuer: provider.issuer.replace('127.0.0.1', 'localhost'), ...CLIENT, name: 'Varnholm House' });
    await expect(foreign.begin(SECRET, BACK)).rejects.toThrow(/issuer/);
  });

  it('is not taken from whoever does not hold the secret of the two ends', async () => {
    const stranger = openProvider({ issuer: provider.issuer, clientId: CLIENT.clientId, clientSecret: 'another', name: 'Varnholm House' });
    await expect(stranger.finish(SECRET, await provider.visit(await stranger.begin(SECRET, BACK)))).rejects.toThrow();
  });
});
