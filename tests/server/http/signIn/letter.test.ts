import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { knows, linkIn, openEntrance, type Entrance } from './entering.ts';

let at: Entrance;
beforeEach(async () => (at = await openEntrance()));
afterEach(() => at.house.close());

const ask = (address: string) => at.house.visitor().post('/api/sign-in/letter', { address });

describe('a link by letter', () => {
  it('goes to an address that is known, in its owner’s language, and signs in to all their ensembles, once', async () => {
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    expect(await ask('Mona@Varnholm.example')).toMatchObject({ status: 202, json: { minutes: 10 } });
    await expect.poll(() => at.letters.length).toBe(1);
    expect(at.letters[0]).toMatchObject({ to: 'mona@varnholm.example', subject: 'Bowline: Ihr Link zum Anmelden' });
    expect(at.letters[0]!.text).toContain('http://localhost/sign-in?token=');
    const visitor = at.house.visitor();
    const token = linkIn(at.letters[0]!.text);
    expect((await visitor.post('/api/sign-in', { token })).status).toBe(200);
    expect((await visitor.get('/api/me/sign-in')).json).toMatchObject({ only: null, may: true, sessions: [{ way: 'letter', here: true }] });
    expect((await at.house.visitor().post('/api/sign-in', { token })).status).toBe(410);
  });

  it('is answered word for word the same where the address is not known, or not confirmed, and nothing is sent', async () => {
    await at.house.store.door.setAddress(at.laid.guest.id, { address: 'jon@varnholm.example', language: 'en' }, null);
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    const replies = [await ask('nobody@varnholm.example'), await ask('jon@varnholm.example'), await ask('mona@varnholm.example')];
    const plain = replies.map(({ status, text, headers }) => ({ status, text, headers: Object.keys(headers).filter((name) => !name.startsWith('x-ratelimit')) }));
    expect(plain[0]).toEqual(plain[2]);
    expect(plain[1]).toEqual(plain[2]);
    await expect.poll(() => at.letters.map(({ to }) => to)).toEqual(['mona@varnholm.example']);
  });

  it('is answered before anything is looked up or sent', async () => {
    let looked = false;
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    const { whoseAddress } = at.house.deps.door;
    let go = () => {};
    at.house.deps.door.whoseAddress = (address) => new Promise((resolve) => (go = () => resolve(whoseAddress(address).then((found) => ((looked = true), found)))));
    expect((await ask('mona@varnholm.example')).status).toBe(202);
    expect(looked).toBe(false);
    go();
    await expect.poll(() => at.letters.length).toBe(1);
  });

  it('is too old after ten minutes', async () => {
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    await ask('mona@varnholm.example');
    await expect.poll(() => at.letters.length).toBe(1);
    at.pass(10);
    expect((await at.house.visitor().post('/api/sign-in', { token: linkIn(at.letters[0]!.text) })).json).toMatchObject({ code: 'LINK_USED' });
  });

  it('cannot be asked for without end, for an address that is known or one that is not', async () => {
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    for (const address of ['mona@varnholm.example', 'nobody@varnholm.example']) {
      const statuses = [];
      for (let n = 0; n < 4; n += 1) statuses.push((await ask(address)).status);
      expect(statuses).toEqual([202, 202, 202, 429]);
    }
    at.pass(16);
    expect((await ask('mona@varnholm.example')).status).toBe(202);
  });

  it('never leads where the request says the library is', async () => {
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    await at.house.visitor().post('/api/sign-in/letter', { address: 'mona@varnholm.example' }, { host: 'evil.example', origin: 'http://evil.example' });
    await expect.poll(() => at.letters.length).toBe(1);
    expect(at.letters[0]!.text).not.toContain('evil.example');
  });

  it('is not offered where no letters are sent', async () => {
    const plain = await openEntrance({ post: null });
    expect((await plain.house.visitor().get('/api/sign-in')).json).toEqual({ letter: false, identity: null });
    expect((await plain.house.visitor().post('/api/sign-in/letter', { address: 'mona@varnholm.example' })).json).toMatchObject({ code: 'NO_LETTERS' });
    await plain.house.close();
  });
});

describe('an address of one’s own', () => {
  it('is known once the letter to it is opened where one is signed in, and by nobody else', async () => {
    const player = await at.enter(at.laid.player);
    expect((await player.put('/api/me/address', { address: 'Mona@Varnholm.example', language: 'it' })).json).toMatchObject({ address: null, claimed: 'mona@varnholm.example' });
    const token = linkIn(at.letters[0]!.text, 'confirm');
    expect(at.letters[0]!.subject).toBe('Bowline: è il Suo indirizzo?');
    expect((await at.house.visitor().post('/api/me/address/confirm', { token })).status).toBe(401);
    expect((await (await at.enter(at.laid.guest)).post('/api/me/address/confirm', { token })).json).toMatchObject({ code: 'CLAIM_OVER' });
    expect((await player.post('/api/me/address/confirm', { token })).json).toMatchObject({ address: { address: 'mona@varnholm.example', confirmed: true }, claimed: null });
    expect((await player.post('/api/me/address/confirm', { token })).json).toMatchObject({ code: 'CLAIM_OVER' });
  });

  it('that was left is told so, and one that is somebody else’s is not taken from them', async () => {
    await knows(at.house, at.laid.principal, 'ilya@varnholm.example');
    await knows(at.house, at.laid.player, 'old@varnholm.example');
    const player = await at.enter(at.laid.player);
    await player.put('/api/me/address', { address: 'ilya@varnholm.example', language: 'en' });
    expect((await player.post('/api/me/address/confirm', { token: linkIn(at.letters.pop()!.text, 'confirm') })).json).toMatchObject({ code: 'ADDRESS_TAKEN' });
    await player.put('/api/me/address', { address: 'new@varnholm.example', language: 'en' });
    await player.post('/api/me/address/confirm', { token: linkIn(at.letters.pop()!.text, 'confirm') });
    await expect.poll(() => at.letters.map(({ to, subject }) => [to, subject])).toEqual([['old@varnholm.example', 'Bowline: Ihre Anmeldung wurde geändert']]);
  });

  it('is written down at once where no letters are sent, for a password, and no link ever goes there', async () => {
    const plain = await openEntrance({ post: null });
    const player = await plain.enter(plain.laid.player);
    expect((await player.put('/api/me/address', { address: 'mona@varnholm.example', language: 'en' })).json.address).toEqual({ address: 'mona@varnholm.example', confirmed: false });
    await plain.house.close();
  });

  it('is in no answer that anybody else gets', async () => {
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    for (const who of [at.laid.principal, at.laid.librarian]) {
      const visitor = await at.enter(who);
      const texts = await Promise.all(['/api/me', '/api/me/sign-in', '/api/shelf', '/api/invitations', `/api/parts/${at.laid.part}`].map(async (path) => (await visitor.get(path)).text));
      expect(texts.join()).not.toContain('mona@');
    }
  });
});

describe('an invitation', () => {
  const invite = async (body: object) => (await at.enter(at.laid.librarian)).post('/api/people', body);

  it('by letter is seen by its reader alone, makes the address known, and reaches all they come to', async () => {
    const { json } = await invite({ name: 'Ruth Ambler', letter: { address: 'Ruth@Varnholm.example', language: 'fr' } });
    expect(json.link).toBeNull();
    expect(at.letters[0]).toMatchObject({ to: 'ruth@varnholm.example', subject: 'Bowline : Varnholm Strings vous invite' });
    const visitor = at.house.visitor();
    await visitor.post('/api/sign-in', { token: linkIn(at.letters[0]!.text) });
    expect((await visitor.get('/api/me/sign-in')).json).toMatchObject({ address: { address: 'ruth@varnholm.example', confirmed: true }, only: null, sessions: [{ way: 'invitation' }] });
  });

  it('handed out opens its ensemble alone and says so', async () => {
    const { json } = await invite({ name: 'Ruth Ambler' });
    const visitor = at.house.visitor();
    await visitor.post('/api/sign-in', { token: linkIn(json.link) });
    expect((await visitor.get('/api/me/sign-in')).json).toMatchObject({ address: null, only: 'Varnholm Strings', may: true });
  });

  it('is listed for the librarian while it is open, and opens nothing once withdrawn, used or a week old', async () => {
    const links = [];
    for (const name of ['Ruth Ambler', 'Otto Lind', 'Vera Stroud']) links.push(linkIn((await invite({ name })).json.link));
    const librarian = await at.enter(at.laid.librarian);
    const open = async () => (await librarian.get('/api/invitations')).json.invitations as { id: string; person: { name: string }; until: string }[];
    expect((await open()).map(({ person }) => person.name)).toEqual(['Ruth Ambler', 'Otto Lind', 'Vera Stroud']);
    expect((await (await at.enter(at.laid.player)).get('/api/invitations')).status).toBe(403);
    const { id } = (await open())[0]!;
    expect((await (await at.enter(at.laid.player)).remove(`/api/invitations/${id}`)).status).toBe(403);
    expect((await librarian.remove(`/api/invitations/${id}`)).status).toBe(200);
    await at.house.visitor().post('/api/sign-in', { token: links[1]! });
    expect((await open()).map(({ person }) => person.name)).toEqual(['Vera Stroud']);
    at.pass(7 * 24 * 60);
    const later = await Promise.all(links.map(async (token) => (await at.house.visitor().post('/api/sign-in', { token })).status));
    expect(later).toEqual([410, 410, 410]);
  });

  it('to an address that is somebody else’s gives nobody that address', async () => {
    await knows(at.house, at.laid.player, 'mona@varnholm.example');
    await invite({ name: 'Ruth Ambler', letter: { address: 'mona@varnholm.example', language: 'en' } });
    const visitor = at.house.visitor();
    await visitor.post('/api/sign-in', { token: linkIn(at.letters[0]!.text) });
    expect((await visitor.get('/api/me/sign-in')).json).toMatchObject({ address: null, only: 'Varnholm Strings' });
  });
});
