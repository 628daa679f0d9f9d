import { randomUUID } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import { createAuthority } from '../../../../server/operations/authority.ts';
import { openPostgres } from '../../../../server/store/postgres.ts';
import { openHouse } from '../../../support/house.ts';
import { answering, clock, heldBytes } from '../child.ts';
import type { Player } from '../furnish.ts';
import type { Entrance } from '../installation.ts';

export type OursAsked = { open: Entrance } | { say: { part: string; by: Player; text: string } } | 'memory';

let at = 0;
let house: Awaited<ReturnType<typeof openHouse>> | undefined;

/** The real app with both its faces. Of what is written it notes the moment before it is broadcast. */
answering<OursAsked>(async (asked) => {
  if (asked === 'memory') return { bytes: await heldBytes() };
  if ('open' in asked) {
    const store = openPostgres(asked.open);
    const authority = createAuthority(store);
    authority.onLogged(() => (at = clock()));
    house = await openHouse(store, { authority });
    await house.app.listen({ host: '127.0.0.1', port: 0 });
    return { port: (house.app.server.address() as AddressInfo).port };
  }
  const { part, by, text } = asked.say;
  const answer = await house!.deps.authority.submit(part, { request: { operation: randomUUID(), name: 'comment', input: { id: randomUUID(), measure: 1, proposal: null, answers: null, text } }, asker: by });
  if (!answer?.ok) throw new Error(`Not taken: ${JSON.stringify(answer)}`);
  return { at };
});
