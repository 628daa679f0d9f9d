import type { HairAnswer, HairBow } from '../../../bowing/messages.ts';
import { timeAxis, type PlayedSpan } from '../../../drawing/playedTime.ts';
import type { Geometry } from '../../../../core/engraving/geometry.ts';
import type { PartIndex } from '../../../library/partIndex.ts';

/** A bow of a section in a line of this part's music; x in staff spaces. */
export interface LaneBow {
  bow: HairBow;
  x0: number;
  x1: number;
  /** It begins in this line: its sign stands here. */
  begins: boolean;
  /** In measures and parts of them from the first of the part, so that sections are compared whatever they print. */
  at: number;
}

/** Nearer than this is the same moment, in measures. */
const SAME = 1e-4;

/** Measures and parts of them at a second, counted by ordinal: 3.5 is the middle of the third. */
export function measuresAt({ barlines, end }: PlayedSpan, second: number): number {
  const i = Math.max(0, barlines.findLastIndex((barline) => barline.second <= second + 1e-6));
  const barline = barlines[i];
  if (!barline) return 0;
  const next = barlines[i + 1]?.second ?? end;
  return barline.ordinal + (next > barline.second ? (second - barline.second) / (next - barline.second) : 0);
}

/** Where measures lie in a line of this part's music, on its notes' own x. */
export function measureAxis(geometry: Geometry, index: PartIndex): (measures: number) => number {
  const { measures } = index.part;
  const span = { barlines: measures.map(({ ordinal }) => ({ ordinal, second: ordinal })), end: (measures.at(-1)?.ordinal ?? 0) + 1 };
  return timeAxis(span, geometry, index);
}

/** The bows of a section's first voice that sound in a line of this part's music. */
export function bowLane(hair: HairAnswer, geometry: Geometry, x: (measures: number) => number): LaneBow[] {
  const [from, to] = [geometry.measures[0]!.ordinal, geometry.measures.at(-1)!.ordinal + 1];
  return (hair.voices[0] ?? []).flatMap((bow): LaneBow[] => {
    const [at, end] = [measuresAt(hair, bow.begins), measuresAt(hair, bow.ends)];
    if (end <= from + SAME || at >= to - SAME) return [];
    return [{ bow, at, x0: x(Math.max(from, at)), x1: x(Math.min(to, end)), begins: at >= from - SAME }];
  });
}

/** Bows that begin at the same moment in both lanes: how many, and those that go opposite ways. */
export function together(mine: readonly LaneBow[], theirs: readonly LaneBow[]): { both: number; against: LaneBow[] } {
  const pairs = theirs.flatMap((their) => {
    const my = their.begins ? mine.find(({ at, begins }) => begins && Math.abs(at - their.at) < SAME) : undefined;
    return my ? [{ my, their }] : [];
  });
  return { both: pairs.length, against: pairs.filter(({ my, their }) => my.bow.direction !== their.bow.direction).map(({ their }) => their) };
}
