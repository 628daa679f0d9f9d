import { createHalls } from '../../server/halls.ts';
import type { Deps } from '../../server/http/deps.ts';
import { lookThrough } from '../../server/jobs/lookThrough.ts';
import { createNotices } from '../../server/operations/notices.ts';
import type { Installation } from '../../server/store/installation.ts';
import { fakeDocuments } from './fakeDocuments.ts';

/** What a worker needs, on an installation that is open already. */
export function workHouse(installation: Installation, more: Partial<Deps> = {}): Deps {
  const { door, attempts, ping, queue } = installation;
  const notices = createNotices();
  return { door, attempts, post: null, identity: null, address: () => 'http://localhost', hall: createHalls(installation, notices.logged), ping, notices, queue, documents: fakeDocuments, lookThrough, now: () => new Date(), origin: null, requestsPerMinute: 0, letters: null, log: () => {}, ...more };
}
