import type { FastifyInstance } from 'fastify';
import { HandBody } from '../../../core/agreement/wire/http.ts';
import type { Deps } from '../deps.ts';
import { read } from '../input.ts';
import { someone } from '../session.ts';

/** A player's own hand. Whose it is comes from the sign-in alone: no address names another person's. */
export function handRoutes(app: FastifyInstance, deps: Deps): void {
  const { door } = deps;

  app.get('/api/me/hand', async (request) => ({ hand: await door.hand((await someone(deps, request)).person.id) }));

  app.put('/api/me/hand', async (request) => {
    const { person } = await someone(deps, request);
    const hand = read(HandBody, request.body);
    await door.setHand(person.id, hand);
    return { hand };
  });

  app.delete('/api/me/hand', async (request) => {
    await door.setHand((await someone(deps, request)).person.id, null);
    return { hand: null };
  });
}
