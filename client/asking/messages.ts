import type { Part } from '../../core/music/part.ts';

/** What the page says to a worker that knows one part. */
export type ToWorker<Question> = { kind: 'part'; part: Part } | { kind: 'ask'; job: number; question: Question };

/** What it says back; `soFar` is an answer that stands until a better one comes. */
export type FromWorker<Answer> = { kind: 'soFar'; job: number; found: Answer } | { kind: 'found'; job: number; found: Answer } | { kind: 'failed'; job: number; why: string };
