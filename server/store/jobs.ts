import type { Kind } from '../queue/queue.ts';

/** Waits for its turn, is worked at; then what it came to: done, refused in a sentence, or stopped by who asked. */
export type JobState = 'waiting' | 'running' | 'done' | 'refused' | 'stopped';

export interface Upload {
  id: string;
  fileName: string;
}

export interface NewJob {
  kind: Kind;
  /** What it is for: a programme, a work or a part. */
  target: string;
  /** What is asked, and how far it is before it is begun: values that can be written as JSON. */
  order: unknown;
  progress: unknown;
  by: string;
  /** Only one of this name is under way at a time. */
  alone: string | null;
  uploads: readonly Upload[];
  at: Date;
}

export interface Job extends Omit<NewJob, 'by' | 'alone'> {
  id: string;
  /** Who waits for it, the one who asked first. */
  askers: string[];
  state: JobState;
  /** It is to stop, or has. */
  stopped: boolean;
  /** What it came to; null before. */
  outcome: unknown;
}

/** It waits, or somebody works at it. */
export const isUnderWay = ({ state }: Pick<Job, 'state'>): boolean => state === 'waiting' || state === 'running';

/** How a job ended, written in the transaction of what it came to: whoever is not the latest to have begun it, or was told to stop, changes nothing. */
export interface Ending<Result = unknown> {
  job: string;
  turn: string;
  progress(): unknown;
  outcome(result: Result): unknown;
}

/** Thrown out of a transaction whose job was taken up by another worker meanwhile, or was stopped. */
export class TurnLost extends Error {}

export interface MadeFile {
  bytes: Uint8Array;
  mediaType: string;
}

/** Something a job made, as its files and what is to be told of it. */
export interface Made {
  /** Values that can be written as JSON. */
  notes: unknown;
  files: { id: string; mediaType: string; size: number }[];
}

/** Long work asked for in one ensemble, the files it came with and the files it makes, kept where every process reaches them. */
export interface Jobs {
  /** Keeps a file as it arrives, piece by piece. Throws what the stream throws, and then keeps nothing. */
  keepUpload(fileName: string, bytes: AsyncIterable<Uint8Array>): Promise<Upload>;
  dropUploads(uploads: readonly Upload[]): Promise<void>;
  /** The bytes of an upload or of something made, in pieces. */
  bytes(file: string): AsyncIterable<Uint8Array>;
  /** Writes the job and puts it in line, both or neither. null where its like is under way. */
  add(job: NewJob): Promise<Job | null>;
  job(id: string): Promise<Job | null>;
  /** Those of a kind since, in the order they came. */
  since(kind: Kind, at: Date): Promise<Job[]>;
  /** Those of a kind for one target, the latest first. */
  of(kind: Kind, target: string): Promise<Job[]>;
  /** How many wait before it. */
  ahead(job: Pick<Job, 'id' | 'kind'>): Promise<number>;
  /** One more waits for it. False where it is under way no more. */
  join(id: string, person: string): Promise<boolean>;
  /** This one waits no more; when nobody does, it is stopped. */
  leave(id: string, person: string): Promise<void>;
  /** Stops one that is under way. False where there is none. */
  stop(id: string): Promise<boolean>;
  /** Takes away one that has ended, with its files. */
  forget(id: string): Promise<void>;
  /** Begins, or begins anew under a turn of one's own; null where nothing is to be done any more. */
  begin(id: string, turn: string): Promise<Job | null>;
  report(id: string, turn: string, progress: unknown): Promise<void>;
  /** Keeps what was made at a place, once. False where the turn is lost. */
  keepMade(id: string, turn: string, place: number, files: readonly MadeFile[], notes: unknown): Promise<boolean>;
  made(id: string, place: number): Promise<Made | null>;
  /** False where the turn is lost. */
  end(ending: Ending<void>, state: 'done' | 'refused' | 'stopped'): Promise<boolean>;
  /** Ends one that nobody will take up again. */
  giveUp(id: string, outcome: unknown): Promise<void>;
  /** Takes away what has ended or lies about since longer than it is kept. */
  sweep(now: Date): Promise<void>;
}

/** How long the end of a job is kept, in hours: an import until the next day, a print until it is fetched, what was found in a piece for the season's week. Chosen, not measured. */
export const KEPT_HOURS: Record<Kind, number> = { import: 24, print: 1, check: 7 * 24 };
/** Files that no job came for. Chosen, not measured. */
export const STRAY_HOURS = 2;
/** A piece of a file. */
export const PIECE_BYTES = 1024 * 1024;
