import { printJob } from '../http/prints/printJob.ts';
import { importJob } from '../imports/importJob.ts';
import { pieceJob } from '../pieces/pieceJob.ts';
import type { Handler } from './handler.ts';
import type { Kind } from './queue.ts';

/** What is done of each kind. */
export const HANDLERS: Record<Kind, Handler> = { import: importJob, print: printJob, check: pieceJob };
