import { z } from 'zod';
import { CheckSettings } from '../../core/check/settings.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { InstrumentName } from '../../core/music/part.ts';
import { deskOf, isFor, SeatId, seatsFor } from '../../core/music/seat.ts';
import { BadInput } from './command.ts';
import { bytesOf } from './scoreFile.ts';

/** Who plays, and what the section has set for itself. */
export interface SectionFile {
  seats: SeatId[];
  settings: Record<string, unknown>;
  /** Where the score does not tell. */
  instrument?: InstrumentName | undefined;
}

const Content = z
  .strictObject({
    players: z.int().min(1).max(40).optional(),
    seats: z.array(SeatId).min(1).max(40).optional(),
    settings: CheckSettings.partial().strict().optional(),
    instrument: z.enum(['violin', 'viola', 'cello', 'double-bass']).optional(),
  })
  .refine(({ players, seats }) => players === undefined || seats === undefined, 'Give either "players" or "seats", not both.')
  .refine(({ seats }) => new Set(seats).size === (seats?.length ?? 0), 'A seat is named twice in "seats".');

/** Without a section: as large as the last desk that any mark names. */
function seatsNamed(marks: readonly Mark[]): SeatId[] {
  const named = marks.flatMap(({ seats }) => (seats === undefined || seats === 'all' ? [] : seats));
  return seatsFor(2 * Math.max(0, ...named.map(deskOf)));
}

/** Reads SECTION.json, or takes the section from the marks where there is none. Throws BadInput for what cannot be used. */
export async function readSectionFile(path: string | undefined, marks: readonly Mark[]): Promise<SectionFile> {
  if (path === undefined) return { seats: seatsNamed(marks), settings: {} };
  let content: unknown;
  try {
    content = JSON.parse(new TextDecoder().decode(await bytesOf(path)));
  } catch (error) {
    if (error instanceof SyntaxError) throw new BadInput(`${path}: This is no JSON (${error.message}). Correct it and try again.`);
    throw error;
  }
  const parsed = Content.safeParse(content);
  if (!parsed.success) {
    throw new BadInput(
      ...parsed.error.issues.map(({ path: place, message }) => `${path}: ${place.length ? `"${place.join('.')}": ` : ''}${message}`),
      'The file should be like {"players":12} or {"seats":["1o","1i"],"settings":{...}}. Correct it and try again.',
    );
  }
  // Only what the file really says: defaults are the checker's own business.
  const { settings } = content as { settings?: Record<string, unknown> };
  const { players, seats, instrument } = parsed.data;
  const all = seats ?? (players === undefined ? seatsNamed(marks) : seatsFor(players));
  for (const mark of marks) {
    if (mark.seats === undefined || mark.seats === 'all' || all.some((seat) => isFor(mark.seats!, seat))) continue;
    throw new BadInput(`A mark is for ${mark.seats.join(', ')}, but the section of ${path} has only ${all.join(', ')}. Correct the mark's seats or the section.`);
  }
  return { seats: all, settings: settings ?? {}, instrument };
}
