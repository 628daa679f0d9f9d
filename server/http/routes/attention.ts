import type { FastifyInstance } from 'fastify';
import { LettersBody, SeenBody, type LettersView, type WaitingView } from '../../../core/agreement/wire/http.ts';
import { waitingOf } from '../../waiting/waitingOf.ts';
import type { Store } from '../../store/store.ts';
import type { Deps } from '../deps.ts';
import { idOf, read } from '../input.ts';
import { signedIn } from '../session.ts';
import { notFound } from '../trouble.ts';

/** What waits for whoever asks, and where their letters go. Whose it is comes from the sign-in alone. */
export function attentionRoutes(app: FastifyInstance, deps: Deps): void {
  const lettersOf = async ({ attention }: Store, person: string): Promise<LettersView> => ({ minutes: deps.letters?.minutes ?? null, wish: await attention.letters(person) });

  app.get('/api/me/waiting', async (request): Promise<WaitingView> => {
    const { person, hall, programmes } = await signedIn(deps, request);
    const parts = await waitingOf(hall, { ...person, programmes }, await hall.store.attention.seen(person.id));
    return { parts: parts.map(({ part }) => part).filter(({ waits }) => waits.length) };
  });

  app.put('/api/parts/:id/seen', async (request) => {
    const { person, hall } = await signedIn(deps, request);
    const { seq } = read(SeenBody, request.body);
    if (!(await hall.store.attention.see(person.id, idOf(request.params), seq))) throw notFound('part');
    return { seq };
  });

  app.get('/api/me/letters', async (request) => {
    const { person, hall } = await signedIn(deps, request);
    return lettersOf(hall.store, person.id);
  });

  app.put('/api/me/letters', async (request) => {
    const { person, hall, programmes } = await signedIn(deps, request);
    const { attention } = hall.store;
    await attention.setLetters(person.id, read(LettersBody, request.body));
    // What happened before the first letter was wanted is no news for it.
    const parts = await waitingOf(hall, { ...person, programmes }, new Map());
    await attention.tell(person.id, new Map(parts.map(({ part, head }) => [part.id, head])), {});
    return lettersOf(hall.store, person.id);
  });

  app.delete('/api/me/letters', async (request) => {
    const { person, hall } = await signedIn(deps, request);
    await hall.store.attention.setLetters(person.id, null);
    return lettersOf(hall.store, person.id);
  });
}
