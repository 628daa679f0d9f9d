import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { describe, expect, it } from 'vitest';
import { connect } from '../../../client/agreement/connection.ts';
import { readAlong } from '../../../client/agreement/readAlong.ts';
import { emptyState, type AgreementState } from '../../../core/agreement/state.ts';
import { id, PLAYER, PRINCIPAL, slip } from '../../core/agreement/section.ts';
import { PART } from './network.ts';
import { Rehearsal, TIMING } from './stands.ts';

/** A principal who writes, and a neighbour section that reads along. */
async function neighbours() {
  const all = new Rehearsal();
  const principal = all.open(PRINCIPAL);
  const states: AgreementState[] = [];
  let renewed = 0;
  const connection = connect({ openWire: all.network.wireOf(PLAYER.id), clock: all.clock, timing: TIMING, protocol: PROTOCOL });
  const end = readAlong({ part: PART, connection, clock: all.clock, timing: TIMING, state: emptyState(), onState: (state) => states.push(state), onRenewed: () => (renewed += 1) });
  await all.clock.pass(100);
  const ink = async (n: number): Promise<void> => {
    principal.session.submit('propose', slip(n));
    principal.session.submit('adopt', { proposal: id(n), revision: 1 });
    await all.clock.pass(500);
  };
  return { all, states, ink, end, renewals: () => renewed };
}

describe('a part on another stand, read along', () => {
  it('what is inked in there is known here without asking', async () => {
    const { all, states, ink } = await neighbours();
    await ink(1);
    expect(states.at(-1)).toEqual(all.authority.state);
    expect(states.at(-1)!.ink).not.toEqual([]);
  });

  it('what was written while the line was cut comes when it is back', async () => {
    const { all, states, ink } = await neighbours();
    all.network.cut(PLAYER.id);
    await ink(1);
    expect(states).toEqual([]);
    all.network.mend(PLAYER.id);
    await all.clock.pass(5000);
    expect(states.at(-1)).toEqual(all.authority.state);
  });

  it('talk leaves the list of what stands the same object', async () => {
    const { all, states, ink } = await neighbours();
    await ink(1);
    const { ink: before } = states.at(-1)!;
    all.open(PLAYER).session.submit('propose', slip(2));
    await all.clock.pass(1000);
    expect(states.at(-1)!.proposals[id(2)]).toBeDefined();
    expect(states.at(-1)!.ink).toBe(before);
  });

  it('nobody is told where one looks, and after the end nothing is heard', async () => {
    const { all, states, ink, end } = await neighbours();
    end();
    await ink(1);
    expect(states).toEqual([]);
    expect(all.network.looked.filter(({ person }) => person === PLAYER.id)).toEqual([]);
  });

  it('exchanged music is said, so that it is fetched again', async () => {
    const { all, renewals } = await neighbours();
    all.network.tell('renewed', { part: PART });
    await all.clock.pass(100);
    expect(renewals()).toBe(1);
  });
});
