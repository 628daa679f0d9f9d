import type { Trouble } from '../../core/agreement/wire/http.ts';
import type { FileStep, ImportStep } from '../../core/agreement/wire/imports.ts';

/** What a file came to so far. */
export interface FileNews {
  step: FileStep;
  parts?: string[];
  trouble?: Trouble;
}

/** Whoever watches an import: may stop it, and hears how far it is. */
export interface Watch {
  signal?: AbortSignal;
  onFile?: (index: number, news: FileNews) => void;
  onStep?: (step: ImportStep) => void;
}
