import type { Part } from '../../core/music/part.ts';
import { asker, type Asker } from '../asking/asker.ts';
import type { Offers, Question } from './messages.ts';

/** The fingering engine, in a worker of its own. */
export const fingerer = (part: Part): Asker<Question, Offers> => asker(part, () => new Worker(new URL('./finger.worker.ts', import.meta.url), { type: 'module' }));
