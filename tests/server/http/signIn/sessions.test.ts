import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { linkFor, tokenOf } from '../../../support/house.ts';
import { openEntrance, type Entrance } from './entering.ts';

let at: Entrance;
beforeEach(async () => (at = await openEntrance()));
afterEach(() => at.house.close());

const DAY = 24 * 60;
const FIREFOX = 'Mozilla/5.0 (Android 15; Tablet; rv:140.0) Gecko/140.0 Firefox/140.0';
async function enter(agent = FIREFOX) {
  const visitor = at.house.visitor();
  await visitor.post('/api/sign-in', { token: tokenOf(await linkFor(at.house, at.laid.player)) }, { 'user-agent': agent });
  return visitor;
}

describe('a sign-in', () => {
  it('that is not used for fourteen days is over', async () => {
    const visitor = await enter();
    at.pass(14 * DAY - 1);
    expect((await visitor.get('/api/me')).status).toBe(200);
    at.pass(14 * DAY);
    expect((await visitor.get('/api/me')).status).toBe(401);
  });

  it('is over after thirty days, however much it is used', async () => {
    const visitor = await enter();
    for (let day = 0; day < 29; day += 1) {
      at.pass(DAY);
      expect((await visitor.get('/api/me')).status).toBe(200);
    }
    at.pass(DAY);
    expect((await visitor.get('/api/me')).status).toBe(401);
  });

  it('is written down as used once in five minutes at most', async () => {
    const visitor = await enter();
    const touched: Date[] = [];
    const { touch } = at.house.deps.door;
    at.house.deps.door.touch = (session, now, expires) => (touched.push(now), touch(session, now, expires));
    for (let minute = 0; minute < 12; minute += 1) {
      await visitor.get('/api/me');
      at.pass(1);
    }
    expect(touched).toHaveLength(2);
  });

  it('is listed with what it is on, when it began and was last used, and which one asks', async () => {
    await enter('curl/8.5.0');
    at.pass(60);
    const visitor = await enter();
    const { sessions } = (await visitor.get('/api/me/sign-in')).json;
    expect(sessions).toMatchObject([
      { browser: 'Firefox', device: 'tablet', way: 'link', here: true },
      { browser: 'other', device: 'other', way: 'link', here: false },
    ]);
    expect(Date.parse(sessions[0].begun) - Date.parse(sessions[1].begun)).toBe(3_600_000);
    expect(JSON.stringify(sessions)).not.toContain(visitor.cookie().split('=')[1]);
  });

  it('is ended by its owner from another, and its sockets are dropped at once', async () => {
    const [lost, visitor] = [await enter(), await enter()];
    const { id } = (await visitor.get('/api/me/sign-in')).json.sessions.find((one: { here: boolean }) => !one.here);
    expect((await visitor.remove(`/api/me/sessions/${id}`)).json.sessions).toHaveLength(1);
    expect(at.dropped).toEqual([id]);
    expect((await lost.get('/api/me')).status).toBe(401);
  });

  it('all others are ended at once', async () => {
    const others = [await enter(), await enter(), await enter()];
    const visitor = await enter();
    expect((await visitor.remove('/api/me/sessions')).json.sessions).toMatchObject([{ here: true }]);
    expect(at.dropped).toHaveLength(3);
    for (const other of others) expect((await other.get('/api/me')).status).toBe(401);
  });

  it('of somebody else is not there to be ended', async () => {
    const [mine, theirs] = [await enter(), await at.enter(at.laid.guest)];
    const { id } = (await mine.get('/api/me/sign-in')).json.sessions[0];
    expect((await theirs.remove(`/api/me/sessions/${id}`)).status).toBe(404);
    expect((await mine.get('/api/me')).status).toBe(200);
  });

  it('has a token that was not there before it: one that was planted opens nothing', async () => {
    const planted = 'bowline=planted-by-somebody-else-000000000000000000';
    const visitor = at.house.visitor();
    await visitor.post('/api/sign-in', { token: tokenOf(await linkFor(at.house, at.laid.player)) }, { cookie: planted });
    expect(visitor.cookie()).not.toBe(planted);
    expect((await at.house.visitor().get('/api/me', { cookie: planted })).status).toBe(401);
  });
});
