import type * as documents from '../jobs/documents.ts';
import type { lookThrough } from '../jobs/lookThrough.ts';
import type { Authority } from '../operations/authority.ts';
import type { Notices } from '../operations/notices.ts';
import type { Store } from '../store/store.ts';

/** Long work on documents, off the main thread. */
export type Documents = typeof documents;

/** What the two faces need. Everything is given, so that an app can be built without listening and with any store. */
export interface Deps {
  store: Store;
  authority: Authority;
  notices: Notices;
  documents: Documents;
  lookThrough: typeof lookThrough;
  now: () => Date;
  /** Public address when a proxy stands in front, e.g. "https://bowline.example"; null when reached directly. */
  origin: string | null;
  /** Requests a minute from one sign-in, or from one address that is not signed in. */
  requestsPerMinute: number;
  /** One letter at most in so many minutes; null where no letters are sent. */
  letters: { minutes: number } | null;
  /** Gets a line for whoever runs the server. */
  log: (line: string, context?: unknown) => void;
}
