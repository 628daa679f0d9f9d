import { z } from 'zod';
import type { LogEntry } from '../agreement/event.ts';
import { inForce, type MarkInForce } from '../agreement/inForce.ts';
import { replay } from '../agreement/replay.ts';
import type { Part } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';

const line = z.string().trim().min(1).max(120);

/** Under whom and when a set of marks was played. */
export const KeptUnder = z.strictObject({ ensemble: line, conductor: line, season: z.string().trim().min(1).max(40) });
export type KeptUnder = z.infer<typeof KeptUnder>;

/** A part of a set: its music with the ids its marks use, and the whole log of what was agreed. */
export interface KeptPart {
  content: Part;
  section: string | null;
  /** Seats of the section as it was, front to back. */
  seats: SeatId[];
  log: LogEntry[];
}

/** The marks of one work as they were played: whole in itself, with the document they stood on. */
export interface KeptSet extends KeptUnder {
  id: string;
  title: string;
  composer: string;
  bytes: Uint8Array;
  fileName: string;
  keptBy: string;
  /** ISO 8601, UTC. */
  keptAt: string;
  parts: KeptPart[];
}

/** What the archive lists of a set. */
export interface KeptSetView extends KeptUnder {
  id: string;
  title: string;
  composer: string;
  fileName: string;
  keptBy: string;
  keptAt: string;
  parts: { name: string; section: string | null; marks: number }[];
}

/**
 * The marks of a kept part that stand on its notes, with the seats they hold for, as its log builds them. Throws where the log has a gap.
 * Example: `keptMarks(part)` of a part with one mark inked in for all is that mark, for "all".
 */
export function keptMarks({ content, seats, log }: KeptPart): MarkInForce[] {
  const notes = new Set(content.measures.flatMap((measure) => measure.notes.map(({ id }) => id)));
  return inForce(replay(log), seats).filter(({ note }) => notes.has(note));
}
