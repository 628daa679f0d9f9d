import type { ImportAnswer, Trouble } from './http.ts';

/** Where one file of an import is: not yet begun, unpacked, read, read to its end, or refused. */
export type FileStep = 'waiting' | 'unpacking' | 'reading' | 'read' | 'refused';

export interface ImportedFile {
  fileName: string;
  step: FileStep;
  /** Names of its string parts, once it is read. */
  parts: string[];
  /** Why it is refused. */
  trouble: Trouble | null;
}

/** Where an import is: waits for its turn, its files are read, its parts are laid beside what is there, it is kept. Then what it came to. */
export type ImportStep = 'waiting' | 'reading' | 'laying' | 'keeping' | 'done' | 'refused' | 'stopped';

/** One import; GET /api/imports answers those of the last day, POST of a score (with `Prefer: respond-async`) the one it began. */
export interface ImportView {
  id: string;
  /** A new work, a corrected edition, or further parts of a work. */
  kind: 'work' | 'edition' | 'parts';
  /** The programme of a new work, or the work it is for. */
  programme: string | null;
  work: string | null;
  files: ImportedFile[];
  step: ImportStep;
  /** Steps done, of all there are: two a file, one to lay the parts, one to keep them. */
  done: number;
  of: number;
  /** What was laid on the shelf. */
  answer: ImportAnswer | null;
  /** Why nothing was. */
  trouble: Trouble | null;
  /** When it was begun. */
  at: string;
}

/** Whether an import goes on. */
export const isUnderWay = ({ step }: Pick<ImportView, 'step'>): boolean => step === 'waiting' || step === 'reading' || step === 'laying' || step === 'keeping';
