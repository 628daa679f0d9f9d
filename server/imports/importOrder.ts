import type { ImportView } from '../../core/agreement/wire/imports.ts';
import type { Upload } from '../store/jobs.ts';

/** What is asked of an import; its target stands with the job: the programme of a new work, else the work. */
export interface ImportOrder {
  kind: ImportView['kind'];
  by: string;
}

export type ImportProgress = Pick<ImportView, 'files' | 'step' | 'done' | 'of'>;

/** How far an import is that nobody has begun. */
export const notBegun = (uploads: readonly Upload[]): ImportProgress => ({
  files: uploads.map(({ fileName }) => ({ fileName, step: 'waiting', parts: [], trouble: null })),
  step: 'waiting',
  done: 0,
  of: uploads.length * 2 + 2,
});
