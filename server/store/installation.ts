import type { Queue } from '../queue/queue.ts';
import type { Attempts } from './attempts.ts';
import type { Door } from './door.ts';
import type { Store } from './store.ts';

/** Everything that is kept for all ensembles of one installation. Two keep it: memory.ts and postgres.ts, held to one suite of tests. */
export interface Installation {
  door: Door;
  /** Where the long work of all ensembles waits for its turn. */
  queue: Queue;
  attempts: Attempts;
  /** What one ensemble keeps. Nothing of another can be reached through it, whatever is asked. */
  of(ensemble: string): Store;
  /** Does something that one server at a time may do, unless another does it now: false then. */
  alone(what: string, work: () => Promise<void>): Promise<boolean>;
  /** Connections by what they are for: how many there are, how many lie idle, how many ask for one. */
  connections(): Record<string, { open: number; idle: number; waiting: number }>;
  /** Changes of the database that this program counts on and that are not there, as after an older state was put back. */
  lacks(): Promise<string[]>;
  /** Throws when it cannot be reached now. */
  ping(): Promise<void>;
  close(): Promise<void>;
}
