/** What long work there is; each kind has a line of its own, so that no print stands behind a season's imports. */
export const KINDS = ['import', 'print', 'check'] as const;
export type Kind = (typeof KINDS)[number];

export const ofEachKind = (count: (kind: Kind) => number): Record<Kind, number> => ({ import: count('import'), print: count('print'), check: count('check') });

/** A job's place in line. What the job is about stands with its ensemble, see `Jobs`. */
export interface Place {
  job: string;
  kind: Kind;
  ensemble: string;
}

/** What is told to every process: a hint to look, never the truth itself. */
export type News =
  | { what: 'asked'; kind: Kind }
  /** Something was made, it ended, or it is to stop. */
  | { what: 'job'; job: string }
  /** Another worker has this job now, or may have it: leave it. */
  | { what: 'lost'; job: string }
  /** Content of these parts changed. */
  | { what: 'renewed'; parts: string[] };

/** The order of long work, shared by all servers and workers. Two keep it: memoryQueue.ts and postgresQueue.ts, held to one suite of tests. */
export interface Queue {
  /** Puts a job in line: ensembles take turns, and within an ensemble first come is first served. */
  put(place: Place): Promise<void>;
  /** The next of a kind, now in the hands of this process; null where none waits. */
  take(kind: Kind): Promise<Place | null>;
  /** It is done with, whatever came of it. */
  end(place: Place): Promise<void>;
  /** Out of these hands, to be taken again: as one try more of those it has, or as if it had not been taken; `lost`: others have it already. */
  giveBack(place: Place, how: 'tried' | 'untried' | 'lost'): Promise<void>;
  /** Nobody wants it any more; nothing happens where it is in somebody's hands. */
  drop(place: Place): Promise<void>;
  /** How many wait before it; 0 where it does not wait. */
  ahead(place: Place): Promise<number>;
  /** How many of each kind wait, of all ensembles. */
  waiting(): Promise<Record<Kind, number>>;
  /** Puts those back in line whose worker is gone: one try more of those they have. */
  takeBack(): Promise<void>;
  /** One that has had all its tries, in the hands of this process; `end` it when its ensemble knows. */
  takeGivenUp(): Promise<Place | null>;
  /** Clears away what is long over. */
  tidy(): Promise<void>;
  tell(news: News): void;
  /** Returns how to stop listening. */
  listen(listener: (news: News) => void): () => void;
  close(): Promise<void>;
}

/** A job whose worker died is begun so many times in all. Chosen, not measured. */
export const TRIES = 3;
