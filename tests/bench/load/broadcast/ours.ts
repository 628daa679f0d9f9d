import { randomUUID } from 'node:crypto';
import type { AddressInfo } from 'node:net';
import { createAuthority, type Authority } from '../../../../server/operations/authority.ts';
import { createNotices } from '../../../../server/operations/notices.ts';
import { openPostgres } from '../../../../server/store/postgres.ts';
import { openHouse } from '../../../support/house.ts';
import { oneEnsemble } from '../../../support/oneEnsemble.ts';
import { answering, clock, heldBytes } from '../child.ts';
import type { Player } from '../furnish.ts';
import type { Ways } from '../installation.ts';

export type OursAsked = { open: Ways } | { say: { part: string; by: Player; text: string } } | 'memory';

let at = 0;
let authority: Authority | undefined;
let house: Awaited<ReturnType<typeof openHouse>> | undefined;

/** The real app with both its faces. Of what is written it notes the moment before it is broadcast. */
answering<OursAsked>(async (asked) => {
  if (asked === 'memory') return { bytes: await heldBytes() };
  if ('open' in asked) {
    const store = await oneEnsemble(openPostgres(asked.open));
    const notices = createNotices();
    authority = createAuthority(store, (part, entries, ours) => {
      at = clock();
      notices.logged(part, entries, ours);
    });
    const hall = { ensemble: store.ensemble, store, authority };
    house = await openHouse(store, { notices, hall: () => hall });
    await house.app.listen({ host: '127.0.0.1', port: 0 });
    return { port: (house.app.server.address() as AddressInfo).port };
  }
  const { part, by, text } = asked.say;
  const answer = await authority!.submit(part, { request: { operation: randomUUID(), name: 'comment', input: { id: randomUUID(), measure: 1, proposal: null, answers: null, text } }, asker: by });
  if (!answer?.ok) throw new Error(`Not taken: ${JSON.stringify(answer)}`);
  return { at };
});
