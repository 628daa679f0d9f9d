import { useMemo } from 'react';
import type { CarriedPlace } from '../../../core/agreement/carried.ts';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';
import type { SystemRange } from '../../../core/engraving/systemRanges.ts';
import { linesOf } from '../../engraving/passage.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { useEngraving } from '../../engraving/useEngraving.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { placeLines } from './placeLines.ts';

export interface Engraved {
  lines: readonly SystemRange[];
  engraved: EngravingSnapshot;
}

/** Measures in a line. Chosen, not measured. */
const LONGEST = { laptop: 3, tablet: 2, phone: 2 };

/** Width of the window from which editions lie beside each other, px; as in changed.css. */
const BESIDE = 1000;

/** The changed places of both editions, engraved as lines of their own; beside each other where there is room. */
export function useTwoEngravings(places: readonly CarriedPlace[], texts: { before: string; after: string } | null): { before: Engraved; after: Engraved; width: number } {
  const size = useWindowSize();
  const { kind, music, spacing } = sizesFor(size.width, size.height);
  const width = size.width < BESIDE ? music - 4 : Math.floor((music - 4) / 2) - 4;
  const [before, after] = useMemo(() => [placeLines(places.map((place) => place.before), LONGEST[kind]), placeLines(places.map((place) => place.after), LONGEST[kind])] as const, [places, kind]);
  const [old, now] = useMemo(() => [texts && before.length ? linesOf(texts.before, before) : null, texts && after.length ? linesOf(texts.after, after) : null] as const, [texts, before, after]);
  const first = useEngraving(old, width, spacing, true);
  const second = useEngraving(now, width, spacing, true);
  return { before: { lines: before, engraved: first.engraved }, after: { lines: after, engraved: second.engraved }, width };
}
