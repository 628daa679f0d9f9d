import type { Queue } from '../queue/queue.ts';
import type { Door } from './door.ts';
import type { Store } from './store.ts';

/** Everything that is kept for all ensembles of one installation. Two keep it: memory.ts and postgres.ts, held to one suite of tests. */
export interface Installation {
  door: Door;
  /** Where the long work of all ensembles waits for its turn. */
  queue: Queue;
  /** What one ensemble keeps. Nothing of another can be reached through it, whatever is asked. */
  of(ensemble: string): Store;
  /** Throws when it cannot be reached now. */
  ping(): Promise<void>;
  close(): Promise<void>;
}
