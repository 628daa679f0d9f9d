import type { FastifyInstance } from 'fastify';
import { HandBody } from '../../../core/agreement/wire/http.ts';
import type { Deps } from '../deps.ts';
import { read } from '../input.ts';
import { signedIn } from '../session.ts';

/** A player's own hand. Whose it is comes from the sign-in alone: no address names another person's. */
export function handRoutes(app: FastifyInstance, deps: Deps): void {
  const { people } = deps.store;

  app.get('/api/me/hand', async (request) => ({ hand: await people.hand((await signedIn(deps, request)).person.id) }));

  app.put('/api/me/hand', async (request) => {
    const { person } = await signedIn(deps, request);
    const hand = read(HandBody, request.body);
    await people.setHand(person.id, hand);
    return { hand };
  });

  app.delete('/api/me/hand', async (request) => {
    await people.setHand((await signedIn(deps, request)).person.id, null);
    return { hand: null };
  });
}
