/** One of the things a group may take. */
export interface Candidate {
  /** Whole points. */
  cost: number;
  /** Rows it uses, and how much of each. */
  rows: Int32Array;
  values: Float64Array;
  /** What it is made of, by which candidates of its group are told apart. */
  features: Int32Array;
}

/** What all groups share: so much room, and points for each beyond it. */
export interface Row {
  room: number;
  over: number;
}

/** What is settled on a branch: a group has a feature, or lacks it. */
export interface Settled {
  group: number;
  feature: number;
  has: boolean;
}

/** Finds the cheapest candidate of a group at these points a row that keeps to what is settled for it, if it costs less than `below`. */
export type Find = (group: number, prices: Float64Array, settled: readonly Settled[], below: number) => Candidate | undefined;

/** A choice of one candidate for each group. */
export interface Choice {
  /** Candidates known at the start; those found on the way are added. */
  groups: Candidate[][];
  rows: readonly Row[];
  find?: Find;
  /** Rows nobody should go beyond that a feature uses, one each. */
  rowsOf?: (group: number, feature: number) => readonly number[];
  /** What a choice really costs, where the rows do not say all of it: their points or more. */
  judge?: (picked: readonly number[]) => number;
}

/** The cheapest choice found; `misjudged`: the search stopped at a choice that really costs more than the rows say. */
export interface Chosen {
  picked: readonly number[];
  cost: number;
  misjudged?: readonly number[];
}

/** Points of one candidate a group, with what is beyond the room. Example: two candidates of 10 in a row for one, at 7 beyond: 27. */
export function costOfChoice({ groups, rows }: Choice, picked: readonly number[]): number {
  const used = new Float64Array(rows.length);
  let cost = 0;
  picked.forEach((candidate, g) => {
    const { cost: own, rows: on, values } = groups[g]![candidate]!;
    cost += own;
    on.forEach((r, k) => {
      used[r]! += values[k]!;
    });
  });
  return rows.reduce((sum, { room, over }, r) => sum + over * Math.max(0, used[r]! - room), cost);
}
