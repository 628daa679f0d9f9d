import type { AgreementState, Proposal } from '../../../core/agreement/state.ts';

/** Open slips that begin in one measure, and how far they reach together. */
export interface OpenRange {
  from: number;
  to: number;
  slips: Proposal[];
}

/** Open slips by where they begin, in the order of the part. */
export function openRanges({ proposals }: AgreementState): OpenRange[] {
  const ranges = new Map<number, OpenRange>();
  for (const slip of Object.values(proposals)) {
    if (slip.status !== 'open') continue;
    const range = ranges.get(slip.from) ?? { from: slip.from, to: slip.to, slips: [] };
    ranges.set(slip.from, { from: slip.from, to: Math.max(range.to, slip.to), slips: [...range.slips, slip] });
  }
  for (const { slips } of ranges.values()) slips.sort((a, b) => a.letter.length - b.letter.length || a.letter.localeCompare(b.letter));
  return [...ranges.values()].sort((a, b) => a.from - b.from);
}

/** Open slips that cover a measure, as they hang under it. */
export function slipsAt(state: AgreementState, measure: number): Proposal[] {
  return openRanges(state)
    .flatMap(({ slips }) => slips)
    .filter(({ from, to }) => from <= measure && measure <= to);
}

/** The next of `places` after `here`, round to the first again. */
export function nextAfter<T>(places: readonly T[], here: number, at: (place: T) => number): T | undefined {
  return places.find((place) => at(place) > here) ?? places[0];
}
