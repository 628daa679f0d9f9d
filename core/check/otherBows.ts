import { bowEvents, type Voice } from '../bowing/events.ts';
import { strokesOf } from '../bowing/strokes.ts';
import { linesOf } from '../matching/line.ts';
import type { Mark } from '../music/mark.ts';
import type { Part } from '../music/part.ts';
import { tempoMap } from '../music/seconds.ts';
import { type BowAtEvent, bowsOnLine } from './bowsOnLine.ts';
import type { OtherSection } from './finding.ts';
import type { Bows } from './ownBows.ts';
import { type SeatMarks, seatMarks } from './seatMarks.ts';
import type { CheckSettings } from './settings.ts';

interface Known {
  /** Settings it was worked out with, and seats. */
  under: string;
  marks: readonly Mark[];
  voices: Voice[];
  bows: Bows;
}

const known = new WeakMap<Part, Known>();

/** The bows of another section. Kept until its marks are another list, or its seats or the settings differ: while one section is marked the others stand still. */
export function otherBows({ part, marks, seats }: OtherSection, settings: CheckSettings): Bows {
  const under = JSON.stringify([settings.assumedTempo, settings.retakeRest, settings.strokesCounted, seats]);
  const before = known.get(part);
  const isSame = before?.under === under;
  if (isSame && before.marks === marks) return before.bows;
  const voices = isSame ? before.voices : bowEvents(part, tempoMap(part, settings.assumedTempo));
  const lines = linesOf(part);
  const bowsBy = (signsOn: SeatMarks['forAll']): BowAtEvent[][] => voices.map((voice, at) => bowsOnLine(lines[at]!, strokesOf(voice, signsOn), settings));
  const printed = isSame ? before.bows.printed : bowsBy(seatMarks(part, [], seats).forAll);
  const bows = { marked: marks.length ? bowsBy(seatMarks(part, marks, seats).forAll) : printed, printed };
  known.set(part, { under, marks, voices, bows });
  return bows;
}
