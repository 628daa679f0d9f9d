import type { SeatId } from '../../../core/music/seat.ts';

/** Where the rosin lies. `from` is the other end of a passage; both ends the same is one note. */
export interface Caret {
  at: string | null;
  from: string | null;
  /** Ordinal of the measure that is open, whose slips hang under it. */
  open: number | null;
  /** The slip in focus there. */
  slip: string | null;
  /** Whose part is shown: of the whole section, or of one seat. */
  seat: SeatId | 'all';
  /** The next note touched is the other end of a passage. */
  reaching: boolean;
}

export interface Walk {
  ids: readonly string[];
  measureOf(id: string): number;
}

export type CaretAction =
  | { type: 'put'; at: string; extend?: boolean }
  | { type: 'step'; by: 1 | -1; extend: boolean; walk: Walk }
  | { type: 'stepMeasure'; by: 1 | -1; extend: boolean; walk: Walk }
  | { type: 'open'; measure: number; slip: string | null }
  | { type: 'reach' }
  | { type: 'close' }
  | { type: 'slip'; slip: string }
  | { type: 'seat'; seat: SeatId | 'all' };

export const startCaret = (at: string | null, seat: SeatId | 'all' = 'all'): Caret => ({ at, from: at, open: null, slip: null, seat, reaching: false });

const put = (caret: Caret, at: string | undefined, extend: boolean): Caret => (at === undefined ? caret : { ...caret, at, from: extend || caret.reaching ? (caret.from ?? at) : at, reaching: false });

/** First note of the next measure that has one; backwards to the start of this measure first, then of the one before. */
function measureStep(at: string, by: 1 | -1, { ids, measureOf }: Walk): string | undefined {
  const here = measureOf(at);
  if (by > 0) return ids.find((id) => measureOf(id) > here);
  const start = ids.find((id) => measureOf(id) === here);
  if (start !== at) return start;
  const before = ids.findLast((id) => measureOf(id) < here);
  return before === undefined ? undefined : ids.find((id) => measureOf(id) === measureOf(before));
}

export function caretReducer(caret: Caret, action: CaretAction): Caret {
  switch (action.type) {
    case 'put':
      return put(caret, action.at, action.extend ?? false);
    case 'step': {
      const { ids } = action.walk;
      const place = caret.at === null ? -1 : ids.indexOf(caret.at);
      return put(caret, place < 0 ? ids[0] : ids[place + action.by], action.extend);
    }
    case 'stepMeasure':
      return put(caret, caret.at === null ? action.walk.ids[0] : measureStep(caret.at, action.by, action.walk), action.extend);
    case 'open':
      return { ...caret, open: action.measure, slip: action.slip };
    case 'reach':
      return { ...caret, reaching: !caret.reaching };
    case 'close':
      return { ...caret, open: null, slip: null };
    case 'slip':
      return { ...caret, slip: action.slip };
    case 'seat':
      return { ...caret, seat: action.seat };
  }
}

/** Ids between the two ends of the passage, in order; one for a single note. */
export function selected({ at, from }: Caret, ids: readonly string[]): readonly string[] {
  if (at === null) return [];
  const ends = [ids.indexOf(at), ids.indexOf(from ?? at)].sort((a, b) => a - b);
  return ends[0]! < 0 ? [at] : ids.slice(ends[0], ends[1]! + 1);
}
