import type { CarriedPlace } from '../../core/agreement/carried.ts';
import type { AgreementState } from '../../core/agreement/state.ts';
import type { Part } from '../../core/music/part.ts';
import type { LaidOver } from '../../core/matching/editions/layOver.ts';
import type { PrintOrder } from '../print/order.ts';
import type { EngravingOrder, Jobs, MarkOrder, Refused } from './requests.ts';
import { Exhausted, type RunOptions, runInWorker } from './runInWorker.ts';

/** Reads an uploaded score off the main thread. A file that takes more room or time than any score does is refused like any bad file. */
export function importScore(bytes: Uint8Array, fileName: string, options?: RunOptions): Promise<Jobs['importScore']['answer']> {
  return orTooMuch(runInWorker('importScore', { bytes, fileName }, options));
}

/** Gives a corrected edition of a part the note ids of the stored one. */
export function realign(part: Part, stored: Part, generation: number, options?: RunOptions): Promise<LaidOver> {
  return runInWorker('realign', { part, stored, generation }, options);
}

/** What did not go along when a corrected edition was laid over. */
export function carriedPlaces(state: AgreementState, older: Part, newer: Part, options?: RunOptions): Promise<CarriedPlace[]> {
  return runInWorker('carriedPlaces', { state, older, newer }, options);
}

/** The source document with the marks merged into one part and nothing else changed. */
export function markDocument(order: MarkOrder, options?: RunOptions): Promise<Jobs['markDocument']['answer']> {
  return orTooMuch(runInWorker('markDocument', order, options));
}

/** One part as MusicXML for the engraver, with our ids on its notes and "m<ordinal>" on its measures. */
export function engravingFor(order: EngravingOrder, options?: RunOptions): Promise<Jobs['engravingFor']['answer']> {
  return orTooMuch(runInWorker('engravingFor', order, options));
}

/** The longest part on the largest paper takes a fraction of this on a busy machine. Chosen after measuring. */
const LONGEST_PRINT_MS = 300_000;

/** A part with its marks as pages to be printed, or as MEI. */
export function printPart(order: PrintOrder, options?: RunOptions): Promise<Jobs['printPart']['answer']> {
  return orTooMuch(runInWorker('printPart', order, { timeLimitMs: LONGEST_PRINT_MS, ...options }));
}

async function orTooMuch<T>(work: Promise<T>): Promise<T | Refused> {
  try {
    return await work;
  } catch (error) {
    if (!(error instanceof Exhausted)) throw error;
    return { ok: false, trouble: { code: 'TOO_BIG', text: `Reading this file takes more ${error.message} than any score needs, so it was put aside. Save the score again from your notation program and send that file.` } };
  }
}
