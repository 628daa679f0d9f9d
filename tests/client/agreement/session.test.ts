import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { describe, expect, it } from 'vitest';
import { memoryQueue } from '../../../client/agreement/queue.ts';
import { refused } from '../../../core/agreement/refusal.ts';
import { replay } from '../../../core/agreement/replay.ts';
import { id, LIBRARIAN, PARTNER, PLAYER, PRINCIPAL, slip } from '../../core/agreement/section.ts';
import { FAIR, PART } from './network.ts';
import { Rehearsal, type Stand } from './stands.ts';

const shown = ({ session }: Stand) => session.getSnapshot();
const slips = (stand: Stand) => Object.keys(shown(stand).state.proposals);

async function rehearsal() {
  const all = new Rehearsal();
  const piet = all.open(PARTNER);
  const wanda = all.open(PLAYER);
  await all.clock.pass(100);
  return { all, piet, wanda };
}

describe('together, live', () => {
  it('what one writes shows at once for them, and a moment later for the others', async () => {
    const { all, piet, wanda } = await rehearsal();
    piet.session.submit('propose', slip(1));
    expect([slips(piet), slips(wanda)]).toEqual([[id(1)], []]);
    expect(shown(piet).waiting).toHaveLength(1);
    await all.clock.pass(100);
    expect([slips(piet), slips(wanda)]).toEqual([[id(1)], [id(1)]]);
    expect(shown(piet)).toMatchObject({ waiting: [], caughtUp: true, status: 'live' });
    expect(shown(piet).confirmed).toEqual(all.authority.state);
  });

  it('somebody who comes later gets the whole log, in several answers if it is long', async () => {
    const { all, piet } = await rehearsal();
    for (let n = 1; n <= 8; n += 1) piet.session.submit('propose', slip(n));
    await all.clock.pass(1000);
    const runa = all.open(PRINCIPAL);
    await all.clock.pass(1000);
    expect(shown(runa).confirmed).toEqual(replay(all.authority.log));
    expect(slips(runa)).toHaveLength(8);
  });

  it('operations of one person reach the log in the order they were written', async () => {
    const { all, piet } = await rehearsal();
    const ids = [1, 2, 3, 4].map((n) => piet.session.submit('propose', slip(n)));
    await all.clock.pass(1000);
    expect(all.authority.log.map(({ operation }) => operation)).toEqual(ids);
  });
});

describe('guarantee 7: a refused operation is rolled back', () => {
  it('when two decide at once, the later sees the first decision and why theirs was not written', async () => {
    const { all, piet } = await rehearsal();
    const runa = all.open(PRINCIPAL);
    piet.session.submit('propose', slip(1));
    await all.clock.pass(100);
    piet.session.submit('withdraw', { proposal: id(1) });
    const operation = runa.session.submit('adopt', { proposal: id(1), revision: 1 });
    expect(shown(runa).state.proposals[id(1)]?.status).toBe('adopted');
    await all.clock.pass(100);
    expect(shown(runa).state.proposals[id(1)]?.status).toBe('withdrawn');
    expect(shown(runa).state.ink).toEqual([]);
    expect(shown(runa)).toMatchObject({ waiting: [], refusals: [{ operation, name: 'adopt', refusal: { code: 'ALREADY_DECIDED' } }] });
    expect(await runa.session.settled(operation)).toMatchObject({ ok: false, refusal: { code: 'ALREADY_DECIDED' } });
    runa.session.dismiss(operation);
    expect(shown(runa).refusals).toEqual([]);
  });

  it('what cannot be is refused here at once and never sent', async () => {
    const { all, piet } = await rehearsal();
    const operation = piet.session.submit('propose', slip(1, { why: '' }));
    expect(shown(piet)).toMatchObject({ waiting: [], refusals: [{ operation, refusal: { code: 'BAD_INPUT' } }] });
    expect(await piet.session.settled(operation)).toMatchObject({ ok: false });
    await all.clock.pass(1000);
    expect(all.authority.heard).toEqual([]);
  });

  it('a refused one does not hold up the rest', async () => {
    const { all, piet, wanda } = await rehearsal();
    all.network.cut('piet');
    wanda.session.submit('propose', slip(1));
    await all.clock.pass(100);
    const outcomes = [slip(1), slip(2), slip(3)].map((one) => piet.session.settled(piet.session.submit('propose', one)));
    expect(slips(piet)).toHaveLength(3);
    all.network.mend('piet');
    await all.clock.pass(1000);
    expect((await Promise.all(outcomes)).map(({ ok }) => ok)).toEqual([false, true, true]);
    expect(shown(piet).state.proposals[id(1)]?.proposed.name).toBe('Wanda');
  });

  it('guarantee 8: a right that was lost since connecting counts when the line is written', async () => {
    const { all, piet } = await rehearsal();
    all.authority.people.set('piet', { ...PARTNER, roles: [] });
    piet.session.submit('propose', slip(1));
    expect(slips(piet)).toEqual([id(1)]);
    await all.clock.pass(100);
    expect(slips(piet)).toEqual([]);
    expect(shown(piet).refusals).toMatchObject([{ refusal: { code: 'NOT_YOUR_ROLE' } }]);
  });

  it('a line that depends on a refused one is shown no more, and is refused in its turn', async () => {
    const { all, piet, wanda } = await rehearsal();
    all.network.cut('piet');
    wanda.session.submit('propose', slip(1));
    await all.clock.pass(100);
    piet.session.submit('propose', slip(1));
    piet.session.submit('withdraw', { proposal: id(1) });
    expect(shown(piet).state.proposals[id(1)]?.status).toBe('withdrawn');
    all.network.mend('piet');
    await all.clock.pass(1000);
    expect(shown(piet).refusals.map(({ refusal }) => refusal.code)).toEqual(['ALREADY_THERE', 'NOT_YOURS']);
    expect(shown(piet).state.proposals[id(1)]?.status).toBe('open');
  });
});

describe('a bad line', () => {
  it('marks written while away wait, in order, and are sent when the line is back', async () => {
    const { all, piet, wanda } = await rehearsal();
    all.network.cut('piet');
    expect(shown(piet).status).toBe('away');
    const ids = [1, 2].map((n) => piet.session.submit('propose', slip(n)));
    await all.clock.pass(60_000);
    expect(shown(piet).waiting.map(({ operation }) => operation)).toEqual(ids);
    expect(slips(piet)).toHaveLength(2);
    all.network.mend('piet');
    await all.clock.pass(1000);
    expect(all.authority.log.map(({ operation }) => operation)).toEqual(ids);
    expect(shown(wanda).state).toEqual(shown(piet).state);
  });

  it('guarantee 2: an answer that gets lost is asked for again under the same id, and the line is written once', async () => {
    const { all, piet } = await rehearsal();
    const operation = piet.session.submit('propose', slip(1));
    await all.clock.pass(15);
    all.network.cut('piet');
    expect(all.authority.log).toHaveLength(1);
    all.network.mend('piet');
    await all.clock.pass(1000);
    expect(all.authority.heard).toEqual([operation, operation]);
    expect(all.authority.log.map((entry) => entry.operation)).toEqual([operation]);
    expect(shown(piet).waiting).toEqual([]);
    expect(await piet.session.settled(operation)).toEqual({ ok: true, seq: 1 });
  });

  it('when nothing comes back at all it asks again after a while', async () => {
    const { all, piet } = await rehearsal();
    all.network.weather = { ...FAIR, loses: () => true };
    const operation = piet.session.submit('propose', slip(1));
    await all.clock.pass(1000);
    all.network.weather = FAIR;
    await all.clock.pass(5000);
    expect(all.authority.log.map((entry) => entry.operation)).toEqual([operation]);
  });

  it('guarantee 5: a row that got lost is noticed by the next one, and by the head', async () => {
    const { all, piet, wanda } = await rehearsal();
    const { onWritten } = all.authority;
    all.authority.onWritten = () => {};
    wanda.session.submit('propose', slip(1));
    await all.clock.pass(100);
    expect(slips(piet)).toEqual([]);
    all.network.tell('head', { part: PART, seq: 1 });
    await all.clock.pass(100);
    expect(slips(piet)).toEqual([id(1)]);
    wanda.session.submit('propose', slip(2));
    await all.clock.pass(100);
    all.authority.onWritten = onWritten;
    wanda.session.submit('propose', slip(3));
    await all.clock.pass(100);
    expect(slips(piet)).toHaveLength(3);
  });

  it('what I wrote never blinks, even when its answer comes before the rows it stands on', async () => {
    const { all, piet, wanda } = await rehearsal();
    const { onWritten } = all.authority;
    all.authority.onWritten = () => {};
    wanda.session.submit('propose', slip(1));
    await all.clock.pass(100);
    all.authority.onWritten = onWritten;
    const seen: boolean[] = [];
    piet.session.subscribe(() => seen.push(id(2) in shown(piet).state.proposals));
    piet.session.submit('propose', slip(2));
    await all.clock.pass(500);
    expect(seen.length).toBeGreaterThan(2);
    expect(seen).not.toContain(false);
    expect(slips(piet)).toEqual([id(1), id(2)]);
  });

  it('when the library asks to wait, the line waits and is sent again', async () => {
    const { all, piet } = await rehearsal();
    all.authority.moods.push({ ok: false, retry: true, text: 'The shelf is being dusted.' }, refused('TOO_MUCH'));
    const operation = piet.session.submit('propose', slip(1));
    await all.clock.pass(2000);
    expect(all.authority.heard).toEqual([operation, operation, operation]);
    expect(shown(piet)).toMatchObject({ waiting: [], refusals: [] });
  });
});

describe('guarantee 9: unsent operations survive a reload with the same ids', () => {
  it('in order, under their ids, shown at once and written once', async () => {
    const { all, piet } = await rehearsal();
    all.network.cut('piet');
    const ids = [1, 2, 3].map((n) => piet.session.submit('propose', slip(n)));
    await all.clock.pass(10);
    const again = all.reload(piet);
    again.session.submit('propose', slip(4));
    await all.clock.pass(0);
    expect(slips(again)).toHaveLength(4);
    await all.clock.pass(2000);
    expect(all.authority.log.map(({ operation }) => operation).slice(0, 3)).toEqual(ids);
    expect(all.authority.log).toHaveLength(4);
    expect(await again.storage.load(`unsent/piet/${PART}`)).toEqual([]);
  });

  it('a line written before the reload and answered only after it is not written twice', async () => {
    const { all, piet } = await rehearsal();
    piet.session.submit('propose', slip(1));
    await all.clock.pass(15);
    expect(all.authority.log).toHaveLength(1);
    const again = all.reload(piet);
    await all.clock.pass(1000);
    expect(all.authority.log).toHaveLength(1);
    expect(shown(again)).toMatchObject({ waiting: [], refusals: [] });
  });

  it('a refused line does not come back', async () => {
    const { all, piet } = await rehearsal();
    all.authority.people.set('piet', { ...PARTNER, roles: [] });
    piet.session.submit('propose', slip(1));
    await all.clock.pass(100);
    const again = all.reload(piet);
    await all.clock.pass(100);
    expect(shown(again).waiting).toEqual([]);
    expect(all.authority.heard).toHaveLength(1);
  });

  it('what one person wrote is never sent as another who uses the same computer', async () => {
    const { all, piet } = await rehearsal();
    all.network.cut('piet');
    piet.session.submit('propose', slip(1));
    piet.session.close();
    const wanda = all.open(PLAYER, { storage: piet.storage });
    await all.clock.pass(1000);
    expect(shown(wanda).waiting).toEqual([]);
    expect(all.authority.log).toEqual([]);
  });

  it('two windows of one person do not lose each other’s lines', async () => {
    const { all, piet } = await rehearsal();
    all.network.cut('piet');
    const other = all.open(PARTNER, { storage: piet.storage });
    await all.clock.pass(0);
    all.network.cut('piet');
    piet.session.submit('propose', slip(1));
    other.session.submit('propose', slip(2));
    await all.clock.pass(10);
    expect(await piet.storage.load(`unsent/piet/${PART}`)).toHaveLength(2);
  });

  it('says so when this browser cannot keep anything', async () => {
    const all = new Rehearsal();
    const broken = { load: () => Promise.reject(new Error('private')), change: () => Promise.reject(new Error('private')) };
    const piet = all.open(PARTNER, { storage: broken });
    await all.clock.pass(100);
    piet.session.submit('propose', slip(1));
    await all.clock.pass(100);
    expect(shown(piet).kept).toBe(false);
    expect(all.authority.log).toHaveLength(1);
  });
});

describe('guarantee 10: an old page', () => {
  it('is told to load again, sends nothing more and keeps what was written', async () => {
    const all = new Rehearsal();
    const storage = memoryQueue();
    const piet = all.open(PARTNER, { storage, protocol: PROTOCOL - 1 });
    await all.clock.pass(100);
    expect(shown(piet).status).toBe('oldProgram');
    const operation = piet.session.submit('propose', slip(1));
    await all.clock.pass(10_000);
    expect(all.authority.heard).toEqual([]);
    const again = all.open(PARTNER, { storage });
    await all.clock.pass(100);
    expect(all.authority.log.map((entry) => entry.operation)).toEqual([operation]);
    expect(shown(again).waiting).toEqual([]);
  });

  it('stops at once when the answer to a line says so', async () => {
    const { all, piet } = await rehearsal();
    all.authority.moods.push(refused('OLD_PROGRAM'));
    piet.session.submit('propose', slip(1));
    piet.session.submit('propose', slip(2));
    await all.clock.pass(20_000);
    expect(shown(piet)).toMatchObject({ status: 'oldProgram', refusals: [] });
    expect(shown(piet).waiting).toHaveLength(2);
    expect(all.authority.heard).toHaveLength(1);
  });
});

describe('for the screen', () => {
  it('the snapshot is the same object until something changes, and then everybody who watches is told', async () => {
    const { all, piet } = await rehearsal();
    let told = 0;
    const stop = piet.session.subscribe(() => (told += 1));
    const before = shown(piet);
    await all.clock.pass(1000);
    expect(shown(piet)).toBe(before);
    piet.session.submit('propose', slip(1));
    expect(told).toBeGreaterThan(0);
    expect(shown(piet)).not.toBe(before);
    await all.clock.pass(100);
    stop();
    const then = told;
    piet.session.submit('propose', slip(2));
    expect(told).toBe(then);
  });

  it('who is here is shown, forgotten while away, and where I look is said again after a cut', async () => {
    const { all, piet } = await rehearsal();
    piet.session.look(12);
    await all.clock.pass(50);
    all.network.tell('present', { part: PART, people: [{ id: 'wanda', name: 'Wanda', seat: '2o', measure: 3 }] });
    await all.clock.pass(50);
    expect(shown(piet).people).toMatchObject([{ name: 'Wanda', measure: 3 }]);
    all.network.cut('piet');
    expect(shown(piet).people).toEqual([]);
    all.network.mend('piet');
    await all.clock.pass(100);
    expect(all.network.looked).toEqual([
      { person: 'piet', measure: 12 },
      { person: 'piet', measure: 12 },
    ]);
  });

  it('a changed part is announced, and after fetching it the new notes and roles count', async () => {
    const { all, piet } = await rehearsal();
    all.network.tell('renewed', { part: PART });
    await all.clock.pass(50);
    expect(shown(piet).renewed).toBe(true);
    piet.session.renew({ me: { ...PARTNER, roles: ['librarian'] }, facts: { measures: 9, notes: new Map(), seats: [] }, state: all.authority.state });
    expect(shown(piet).renewed).toBe(false);
    const operation = piet.session.submit('propose', slip(1));
    expect(await piet.session.settled(operation)).toMatchObject({ ok: false, refusal: { code: 'NOT_YOUR_ROLE' } });
  });

  it('a server whose log is shorter than ours is not followed further until the part is fetched again', async () => {
    const { all, piet } = await rehearsal();
    piet.session.submit('propose', slip(1));
    piet.session.submit('propose', slip(2));
    await all.clock.pass(200);
    all.network.cut('piet');
    all.authority.log.pop();
    all.authority.state = replay(all.authority.log);
    all.network.mend('piet');
    await all.clock.pass(200);
    expect(shown(piet).renewed).toBe(true);
    piet.session.renew({ me: PARTNER, facts: { measures: 4, notes: new Map(), seats: [] }, state: all.authority.state });
    await all.clock.pass(200);
    expect(slips(piet)).toEqual([id(1)]);
  });

  it('after closing nothing more is heard', async () => {
    const { all, piet, wanda } = await rehearsal();
    wanda.session.close();
    const before = shown(wanda);
    piet.session.submit('propose', slip(1));
    await all.clock.pass(1000);
    expect(shown(wanda)).toBe(before);
  });

  it('a librarian follows as everybody does', async () => {
    const { all, piet } = await rehearsal();
    const osk = all.open(LIBRARIAN);
    piet.session.submit('propose', slip(1));
    await all.clock.pass(200);
    osk.session.submit('lock', {});
    await all.clock.pass(200);
    expect(shown(piet).state.locked).toBe(true);
  });
});
