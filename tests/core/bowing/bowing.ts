import { bowEvents, type Voice } from '../../../core/bowing/events.ts';
import { type Stroke, strokesOf } from '../../../core/bowing/strokes.ts';
import { seatMarks } from '../../../core/check/seatMarks.ts';
import type { Part } from '../../../core/music/part.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { partOf } from '../../support/partBuilder.ts';
import { marksOf, type ShortMark } from '../check/ruleTable.ts';

export const voicesIn = (part: Part): Voice[] => bowEvents(part, tempoMap(part, 60));

/** The first voice of a piece and its bows for a player who sees these marks. */
export function bowsIn(music: string | Part, marks: ShortMark[] = []): { voice: Voice; strokes: Stroke[] } {
  const part = typeof music === 'string' ? partOf(music) : music;
  const voice = voicesIn(part)[0]!;
  return { voice, strokes: strokesOf(voice, seatMarks(part, marksOf(marks), []).forAll) };
}

/** Notes under each bow, e.g. "m1n0 m1n1 / m1n2". */
export const asText = (strokes: readonly Stroke[]): string => strokes.map((stroke) => stroke.pieces.map(({ event }) => event.head.id).join(' ')).join(' / ');
