import type { FastifyInstance } from 'fastify';
import type { Authority } from '../operations/authority.ts';
import type { Notices } from '../operations/notices.ts';
import type { Installation } from '../store/installation.ts';
import type { Daybook } from './daybook.ts';
import { createMeasures, type Measures } from './measures.ts';
import { watchOperations } from './watchOperations.ts';
import { watchRequests } from './watchRequests.ts';

/** What looks on at a server: numbers and a daybook. */
export interface Watch {
  measures: Measures;
  authority(authority: Authority, ensemble: string): Authority;
  requests(app: FastifyInstance): void;
  sockets(open: () => number): void;
}

export function watchServer({ daybook, installation, notices, redis }: { daybook: Daybook; installation: Installation; notices: Notices; redis: { up(): boolean } | null }): Watch {
  const measures = createMeasures();
  notices.listen({ logged: (_part, entries, ours) => ours && measures.batch(entries.length) });
  measures.gauge('bowline_redis_up', 'Whether Redis answers; 0 also where none is set.', () => (redis?.up() ? 1 : 0));
  for (const [what, help] of [['open', 'Connections to the database.'], ['idle', 'Connections to the database that nobody uses now.'], ['waiting', 'Askings that wait for a connection to the database.']] as const) {
    measures.gauges(`bowline_database_connections_${what}`, help, 'role', () => Object.fromEntries(Object.entries(installation.connections()).map(([role, counts]) => [role, counts[what]])));
  }
  // While the store is away nothing is known of its line; the numbers of the server itself are told all the same.
  measures.gauges('bowline_jobs_waiting', 'Long jobs in line, of all ensembles and servers.', 'kind', () => installation.queue.waiting().catch(() => ({})));
  return {
    measures,
    authority: watchOperations(measures, daybook),
    requests: (app) => watchRequests(app, measures, daybook),
    sockets: (open) => measures.gauge('bowline_sockets', 'Live lines that are open.', open),
  };
}
