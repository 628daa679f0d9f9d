import type { ImportAnswer, Trouble } from '../../core/agreement/wire/http.ts';
import type { FileStep, ImportStep } from '../../core/agreement/wire/imports.ts';
import type { Ending } from '../store/jobs.ts';

/** What a file came to so far. */
export interface FileNews {
  step: FileStep;
  parts?: string[];
  trouble?: Trouble;
}

/** Whoever watches an import: may stop it, hears how far it is, and says how the end of a job is written together with what it came to. */
export interface Watch {
  signal?: AbortSignal;
  onFile?: (index: number, news: FileNews) => void;
  onStep?: (step: ImportStep) => void;
  ending?: (notes: ImportAnswer['notes']) => Ending<string>;
}
