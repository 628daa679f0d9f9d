import type * as documents from '../jobs/documents.ts';
import type { Hall } from '../halls.ts';
import type { lookThrough } from '../jobs/lookThrough.ts';
import type { Post } from '../mail/post.ts';
import type { Notices } from '../operations/notices.ts';
import type { Queue } from '../queue/queue.ts';
import type { IdentityProvider } from '../signIn/identityProvider.ts';
import type { Attempts } from '../store/attempts.ts';
import type { Daybook } from '../watch/daybook.ts';
import type { Door } from '../store/door.ts';

/** Long work on documents, off the main thread. */
export type Documents = typeof documents;

/** What the two faces need for all ensembles. Everything is given, so that an app can be built without listening and with any store. */
export interface Deps {
  /** Who there is and how they come in. */
  door: Door;
  /** How often something was tried, one truth for all processes. */
  attempts: Attempts;
  /** Null where no letters are sent. */
  post: Pick<Post, 'send'> | null;
  /** The orchestra's own sign-in; null where there is none. */
  identity: IdentityProvider | null;
  /** Of the library as it is opened in a browser, for links in letters. Never from what a request says of itself. */
  address: () => string;
  /** What one ensemble has of its own. */
  hall: (ensemble: string) => Hall;
  /** Throws when what is kept cannot be reached now. */
  ping: () => Promise<void>;
  notices: Notices;
  /** Where long work waits for its turn. */
  queue: Queue;
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
  log: Daybook['log'];
}

/** The same with one ensemble's hall. */
export type InHall = Deps & Hall;
