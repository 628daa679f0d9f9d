import { z } from 'zod';

/** Millimetres. */
export type Mm = number;

export interface Paper {
  name: PaperName;
  width: Mm;
  height: Mm;
}

export const PaperName = z.enum(['a4', 'b4', '9x12', '10x13']);
export type PaperName = z.infer<typeof PaperName>;

const INCH = 25.4;

/** Sheets parts are printed on. Sizes: ISO 216 (A4), JIS P 0138 (B4), inches. */
const PAPERS: Record<PaperName, Paper> = {
  a4: { name: 'a4', width: 210, height: 297 },
  b4: { name: 'b4', width: 257, height: 364 },
  '9x12': { name: '9x12', width: 9 * INCH, height: 12 * INCH },
  '10x13': { name: '10x13', width: 10 * INCH, height: 13 * INCH },
};

/** A sheet by its name. Example: `paperNamed('a4').width` is 210. */
export const paperNamed = (name: PaperName): Paper => PAPERS[name];

/**
 * Height of a staff, bottom line to top line. What two players can read from one stand: 7.5 is read best, under 7.0 is refused, over 8.5 few measures fit.
 * Source: MOLA, Guidelines for Music Preparation (2017).
 */
export const STAFF = { usual: 7.5, least: 7, most: 8.5 } as const;

export type StaffAnswer = { ok: true; warning?: string } | { ok: false; text: string };

/**
 * Whether a shared part may be printed with staves of this height in mm, in words for whoever asked. Above 20 mm or no number is refused too.
 * Example: `staffAllowed(6.5).ok` is false.
 */
export function staffAllowed(staff: Mm): StaffAnswer {
  if (!Number.isFinite(staff) || staff < STAFF.least) return { ok: false, text: `A staff of ${staff} mm is too small for two players at one stand. Ask for 7 mm or more; 7.5 mm is read best.` };
  if (staff > 20) return { ok: false, text: `A staff of ${staff} mm is larger than any part. Ask for 7 to 8.5 mm; 7.5 mm is read best.` };
  if (staff > STAFF.most) return { ok: true, warning: `A staff of ${staff} mm is larger than players need, and there will be more page turns. 7.5 mm is read best.` };
  return { ok: true };
}
