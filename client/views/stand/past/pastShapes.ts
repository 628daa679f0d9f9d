import type { HistoryMoment } from '../../../../core/agreement/measureHistory.ts';

/** What is left of a slip's line at its end: ink goes on to the edge, pencil does while it is open. */
export type LaneEnd = 'open' | 'adopted' | 'setAside' | 'withdrawn';

/** A slip's line in the picture, in staff spaces. */
export interface PastLane {
  slip: string | null;
  y: number;
  x0: number;
  x1: number;
  /** Where pencil turned to ink; null where it did not. */
  ink: number | null;
  end: LaneEnd;
}

export interface PastShapes {
  lanes: PastLane[];
  moments: { moment: HistoryMoment; x: number; y: number }[];
  /** Where another day begins. */
  days: { x: number; at: string }[];
  width: number;
  height: number;
}

const LEFT = 5;
const RIGHT = 2;
const TOP = 4.4;
const LANE = 4.4;
/** All of it, where many things happened; the steps between two moments. */
const WIDTH = 40;
const [NEAR, FAR] = [1.8, 4];
const ENDS: Partial<Record<HistoryMoment['kind'], LaneEnd>> = { adopted: 'adopted', setAside: 'setAside', withdrawn: 'withdrawn' };

/** The history of a measure as lines, one a slip in the order they were laid, one for the measure itself; every moment a step to the right, whatever time lay between. */
export function pastShapes(moments: readonly HistoryMoment[]): PastShapes {
  const step = Math.max(NEAR, Math.min(FAR, (WIDTH - LEFT - RIGHT) / Math.max(1, moments.length)));
  const slips = [...new Set(moments.map(({ slip }) => slip))];
  const x = (i: number): number => LEFT + (i + 0.5) * step;
  const width = LEFT + moments.length * step + RIGHT;
  const y = (slip: string | null): number => TOP + slips.indexOf(slip) * LANE;
  const lanes = slips.map((slip): PastLane => {
    const own = moments.flatMap((moment, i) => (moment.slip === slip ? [{ moment, x: x(i) }] : []));
    const decided = own.findLast(({ moment }) => ENDS[moment.kind] !== undefined);
    const end = decided ? ENDS[decided.moment.kind]! : 'open';
    const goesOn = slip !== null && (end === 'open' || end === 'adopted');
    return { slip, y: y(slip), x0: own[0]!.x, x1: goesOn ? width - RIGHT / 2 : (decided ?? own.at(-1)!).x, ink: end === 'adopted' ? decided!.x : null, end };
  });
  const day = ({ at }: HistoryMoment): string => at.slice(0, 10);
  const days = moments.flatMap((moment, i) => (i === 0 || day(moment) !== day(moments[i - 1]!) ? [{ x: x(i), at: moment.at }] : []));
  return { lanes, moments: moments.map((moment, i) => ({ moment, x: x(i), y: y(moment.slip) })), days, width, height: TOP + slips.length * LANE - 0.8 };
}
