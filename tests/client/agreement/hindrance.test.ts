import { describe, expect, it } from 'vitest';
import { refused } from '../../../core/agreement/refusal.ts';
import type { HeldBy, SubmitAnswer } from '../../../core/agreement/wire/socket.ts';
import { id, PARTNER, slip } from '../../core/agreement/section.ts';
import { FAIR } from './network.ts';
import { Rehearsal, TIMING, type Stand } from './stands.ts';

const shown = ({ session }: Stand) => session.getSnapshot();
const going = (stand: Stand) => [shown(stand).hindrance, shown(stand).waiting.length, shown(stand).arrived];

async function alone(options: Parameters<Rehearsal['open']>[1] = {}) {
  const all = new Rehearsal();
  const piet = all.open(PARTNER, options);
  await all.clock.pass(100);
  return { all, piet };
}

describe('what keeps a line from the log', () => {
  it('is nothing where all goes its way, and nobody is told that it arrived', async () => {
    const { all, piet } = await alone();
    const said = new Set<string>();
    piet.session.subscribe(() => said.add(JSON.stringify([shown(piet).hindrance, shown(piet).arrived])));
    piet.session.submit('propose', slip(1));
    await all.clock.pass(3000);
    expect([...said]).toEqual(['[null,false]']);
  });

  const HELD: [HeldBy | undefined, string][] = [['SHELVES_AWAY', 'shelvesAway'], ['SHELVES_FULL', 'shelvesFull'], ['TOO_FAST', 'slower'], ['SIGNED_OUT', 'signedOut'], [undefined, 'late']];
  it.each(HELD)('where the library answers %s it is %s, the line is kept, and when it is written that is said for a moment', async (by, hindrance) => {
    const { all, piet } = await alone();
    all.authority.moods.push({ ok: false, retry: true, text: 'Later.', ...(by ? { by } : {}) });
    piet.session.submit('propose', slip(1));
    await all.clock.pass(30);
    expect(going(piet)).toEqual([hindrance, 1, false]);
    await all.clock.pass(TIMING.pause + 100);
    expect(going(piet)).toEqual([null, 0, true]);
    expect(all.authority.log).toHaveLength(1);
    await all.clock.pass(TIMING.written);
    expect(going(piet)).toEqual([null, 0, false]);
  });

  it('is the silence of a line that is half open, told long before the line is given up', async () => {
    const { all, piet } = await alone();
    all.network.weather = { ...FAIR, loses: () => true };
    piet.session.submit('propose', slip(1));
    await all.clock.pass(TIMING.patience - 10);
    expect(going(piet)).toEqual([null, 1, false]);
    await all.clock.pass(20);
    expect(going(piet)).toEqual(['late', 1, false]);
    all.network.weather = FAIR;
    await all.clock.pass(TIMING.answer + TIMING.pause + 200);
    expect(going(piet)).toEqual([null, 0, true]);
  });

  it('is that the part is not open to them any more: what they wrote is not refused and not thrown away', async () => {
    const { all, piet } = await alone();
    const gone: SubmitAnswer = { ...refused('BAD_INPUT', { detail: 'no such part.' }), gone: true };
    all.authority.moods.push(gone, gone);
    piet.session.submit('propose', slip(1));
    await all.clock.pass(30);
    expect(going(piet)).toEqual(['gone', 1, false]);
    expect(shown(piet).refusals).toEqual([]);
    expect(await piet.storage.load('unsent/piet/violin-1')).toHaveLength(1);
    await all.clock.pass(1000);
    expect(going(piet)).toEqual([null, 0, true]);
  });

  it('is a cut, until it is found out on another way what is behind it', async () => {
    let why = (_: 'signedOut') => {};
    const { all, piet } = await alone({ askWhy: () => new Promise((resolve) => (why = resolve)) });
    all.network.cut('piet');
    piet.session.submit('propose', slip(1));
    expect(going(piet)).toEqual(['cut', 1, false]);
    why('signedOut');
    await all.clock.pass(0);
    expect(going(piet)).toEqual(['signedOut', 1, false]);
    all.network.mend('piet');
    await all.clock.pass(100);
    expect(going(piet)).toEqual([null, 0, true]);
  });

  it('what is found out too late says nothing of a line that is back', async () => {
    let why = (_: 'silent') => {};
    const { all, piet } = await alone({ askWhy: () => new Promise((resolve) => (why = resolve)) });
    all.network.cut('piet');
    all.network.mend('piet');
    await all.clock.pass(100);
    why('silent');
    await all.clock.pass(0);
    expect(going(piet)).toEqual([null, 0, false]);
  });

  it('is another who signed in in this browser: nothing is sent in their name', async () => {
    const { all, piet } = await alone();
    all.network.cut('piet');
    piet.session.submit('propose', slip(1));
    all.authority.greets = 'wanda';
    all.network.mend('piet');
    await all.clock.pass(2000);
    expect(going(piet)).toEqual(['another', 1, false]);
    expect(all.authority.heard).toEqual([]);
    const again = all.reload(piet);
    all.authority.greets = 'piet';
    await all.clock.pass(2000);
    expect(Object.keys(shown(again).confirmed.proposals)).toEqual([id(1)]);
  });

  it('one that comes back refused is not said to have arrived', async () => {
    const { all, piet } = await alone();
    all.authority.moods.push({ ok: false, retry: true, text: 'Later.' }, refused('LOCKED'));
    piet.session.submit('propose', slip(1));
    await all.clock.pass(1000);
    expect(going(piet)).toEqual([null, 0, false]);
    expect(shown(piet).refusals).toHaveLength(1);
  });
});
