import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openLaidHouse, type LaidHouse } from '../../support/laidHouse.ts';
import type { House } from '../../support/house.ts';
import type { LaidOut } from '../../support/laidOut.ts';

let opened: LaidHouse;
let house: House;
let laid: LaidOut;
beforeAll(async () => {
  opened = await openLaidHouse();
  ({ house, laid } = opened);
});
afterAll(() => opened.close());

const HAND = { factor: 0.8713, shortFourth: true };

describe('a player’s own hand', () => {
  it('is kept for its owner, and forgotten when they say so', async () => {
    const player = await house.signIn(laid.player);
    expect((await player.get('/api/me/hand')).json).toEqual({ hand: null });
    expect(await player.put('/api/me/hand', HAND)).toMatchObject({ status: 200, json: { hand: HAND } });
    expect((await (await house.signIn(laid.player)).get('/api/me/hand')).json).toEqual({ hand: HAND });
    expect((await player.remove('/api/me/hand')).json).toEqual({ hand: null });
    expect((await player.get('/api/me/hand')).json).toEqual({ hand: null });
  });

  it('is in no answer anybody else gets, in no log and in no line the server writes', async () => {
    const player = await house.signIn(laid.player);
    await player.put('/api/me/hand', HAND);
    for (const other of [laid.principal, laid.librarian, laid.guest]) {
      const visitor = await house.signIn(other);
      expect((await visitor.get('/api/me/hand')).json).toEqual({ hand: null });
      for (const path of ['/api/me', '/api/shelf', `/api/parts/${laid.part}`, `/api/parts/${laid.part}/log`]) {
        const { text } = await visitor.get(path);
        expect(text).not.toContain('0.8713');
        expect(text).not.toContain('shortFourth');
      }
    }
    expect(house.lines.join('\n')).not.toContain('0.8713');
  });

  it('is asked of nobody who is not signed in', async () => {
    expect((await house.visitor().get('/api/me/hand')).status).toBe(401);
    expect((await house.visitor().put('/api/me/hand', HAND)).status).toBe(401);
    expect((await house.visitor().remove('/api/me/hand')).status).toBe(401);
  });

  it.each([{ factor: 0.7, shortFourth: false }, { factor: 1.2, shortFourth: false }, { factor: 1 }, { factor: 'wide', shortFourth: false }])('%o is no hand and is refused', async (body) => {
    const player = await house.signIn(laid.player);
    const reply = await player.put('/api/me/hand', body);
    expect(reply.status).toBe(400);
    expect(reply.json.text.length).toBeGreaterThan(10);
  });
});
