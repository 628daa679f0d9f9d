import type { FastifyInstance } from 'fastify';
import { TrailAsked, type TrailView } from '../../../core/agreement/wire/trail.ts';
import type { Person } from '../../store/people.ts';
import type { Store } from '../../store/store.ts';
import type { TrailAsking } from '../../store/trail.ts';
import type { Deps } from '../deps.ts';
import { read } from '../input.ts';
import { signedIn } from '../session.ts';
import { trouble } from '../trouble.ts';

const ROWS_AT_ONCE = 50;

/** What somebody may read of the trail: the librarian all of it; a principal what is about their sections and the people in them; nobody else anything. */
async function readable({ sections }: Store, { id, librarian }: Person): Promise<TrailAsking['within']> {
  if (librarian) return null;
  const led = (await sections.all()).filter(({ principal }) => principal?.id === id);
  if (led.length === 0) throw trouble(403, 'NOT_YOUR_ROLE', 'What was done here is read by the librarian and the principals. Ask one of them.');
  return { sections: led.map((section) => section.id), people: led.flatMap(({ seats }) => seats.flatMap(({ person }) => (person ? [person.id] : []))) };
}

export function trailRoutes(app: FastifyInstance, deps: Deps): void {
  app.get('/api/trail', async (request): Promise<TrailView> => {
    const { person, hall } = await signedIn(deps, request);
    const within = await readable(hall.store, person);
    const rows = await hall.store.trail.rows({ ...read(TrailAsked, request.query), limit: ROWS_AT_ONCE + 1, within });
    const shown = rows.slice(0, ROWS_AT_ONCE);
    return { rows: shown, before: rows.length > ROWS_AT_ONCE ? shown.at(-1)!.id : null };
  });
}
