import { z } from 'zod';
import { canBeWritten, NOT_WRITTEN } from '../music/text.ts';

/** Chosen by whoever asks, before sending, so that a prediction and the log name one thing alike. */
export const Id = z.uuid();

/** Ordinal of a measure in its part, from 1; a part of more than 20,000 measures is no part (chosen, not measured). */
export const MeasureOrdinal = z.int().min(1).max(20_000);

/** A sentence of why, 1 to 500 characters. */
export const Why = z.string().trim().min(1).max(500).refine(canBeWritten, NOT_WRITTEN);

/** A sentence of why that may be left out. */
export const WhyOrNothing = z.string().trim().max(500).refine(canBeWritten, NOT_WRITTEN).default('');

/** Somebody named in what is said, as their name stands there after @. */
export const Mention = z.strictObject({ person: z.string().min(1).max(64), name: z.string().trim().min(1).max(80) });

/** What somebody says, 1 to 2,000 characters. */
export const Words = z.string().trim().min(1).max(2000).refine(canBeWritten, NOT_WRITTEN);
