import { z } from 'zod';

/** A wrong note as somebody finds it: what the edition says there, and what it should say. */
export const NewErratumBody = z.strictObject({ measure: z.int().min(1).max(20_000), says: z.string().trim().min(1).max(300), should: z.string().trim().min(1).max(300) });

/** GET /api/works/:work/errata */
export interface ErratumView {
  id: string;
  /** Names, so that the list can be read when part and edition are gone. */
  part: string;
  edition: string;
  /** Ordinal in the part, and the printed number. */
  measure: number;
  number: string;
  says: string;
  should: string;
  by: string;
  /** ISO 8601, UTC; `settled` null while the edition is still wrong. */
  at: string;
  settled: string | null;
}
