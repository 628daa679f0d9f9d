import type { Part } from '../../core/music/part.ts';
import { asker, type Asker } from '../asking/asker.ts';
import type { PlanAnswer, PlanQuestion } from './messages.ts';

/** The planner of staggered passages, in a worker of its own. */
export const planner = (part: Part): Asker<PlanQuestion, PlanAnswer> => asker(part, () => new Worker(new URL('./stagger.worker.ts', import.meta.url), { type: 'module' }));
