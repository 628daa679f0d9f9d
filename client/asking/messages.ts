import type { Part } from '../../core/music/part.ts';

/** What the page says to a worker that knows one part. */
export type ToWorker<Question> = { kind: 'part'; part: Part } | { kind: 'ask'; job: number; question: Question };

/** What it says back; `share` is how much of the work is done, 0 to 1. */
export type FromWorker<Answer> = { kind: 'share'; job: number; share: number } | { kind: 'found'; job: number; found: Answer } | { kind: 'failed'; job: number; why: string };
