import type { Part } from '../../core/music/part.ts';
import { asker, type Asker } from '../asking/asker.ts';
import type { BesideAnswer, BesideQuestion } from './messages.ts';

/** How the other sections bow, from a worker of its own. */
export const besider = (part: Part): Asker<BesideQuestion, BesideAnswer> => asker(part, () => new Worker(new URL('./beside.worker.ts', import.meta.url), { type: 'module' }));
