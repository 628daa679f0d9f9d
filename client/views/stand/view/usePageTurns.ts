import { useMemo } from 'react';
import { placeMarks } from '../../../../core/engraving/marks/placeMarks.ts';
import type { EngravingSnapshot } from '../../../engraving/engraving.ts';
import { bySystem } from '../bySystem.ts';
import type { Desk } from '../desk.ts';
import { extentOf } from '../../../../core/engraving/marks/extent.ts';
import { inked } from '../shownMarks.ts';
import { pageTurns } from './pageTurns.ts';

const NONE: ReadonlyMap<number, number> = new Map();

/** The page that begins at a line, by the line's index, as the print will have it: with what stands in ink. Nothing while lines are still being engraved. */
export function usePageTurns(on: boolean, { standing, caret, index, facts }: Desk, { systems, ranges, whole, drawn }: EngravingSnapshot): ReadonlyMap<number, number> {
  const ready = on && whole && drawn === systems.length;
  return useMemo(() => {
    if (!ready) return NONE;
    const marks = bySystem(ranges, inked(standing, caret.seat, index), ({ note }) => facts.notes.get(note) ?? 0);
    const heights = systems.map(({ drawing }, i) => {
      const { up, down } = extentOf(drawing!.geometry, placeMarks(drawing!.geometry, marks[i]!), false);
      return up + down + drawing!.geometry.bottom - drawing!.geometry.top;
    });
    return new Map(pageTurns(heights).map((line, i) => [line, i + 2]));
  }, [ready, standing, caret.seat, index, facts, systems, ranges]);
}
