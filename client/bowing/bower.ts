import type { Part } from '../../core/music/part.ts';
import { asker, type Asker } from '../asking/asker.ts';
import type { HairAnswer, HairQuestion } from './messages.ts';

/** Where the bow lies along its hair, from a worker of its own. */
export const bower = (part: Part): Asker<HairQuestion, HairAnswer> => asker(part, () => new Worker(new URL('./bow.worker.ts', import.meta.url), { type: 'module' }));
