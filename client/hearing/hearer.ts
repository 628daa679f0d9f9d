import type { Part } from '../../core/music/part.ts';
import { asker, type Asker } from '../asking/asker.ts';
import type { Heard, HearQuestion } from './messages.ts';

/** Passages as samples, from a worker of its own. */
export const hearer = (part: Part): Asker<HearQuestion, Heard> => asker(part, () => new Worker(new URL('./hear.worker.ts', import.meta.url), { type: 'module' }));
