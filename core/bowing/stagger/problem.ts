export type Direction = 'down' | 'up';

/** A place in the passage where a bow may change: a notated subdivision, an onset, a shift. */
export interface Instant {
  /** Seconds from the start of the passage. */
  time: number;
  onBarline: boolean;
  onBeat: boolean;
  /** Names the notated subdivision the instant belongs to. */
  subdivision: string | number;
  /** 0 (nothing happens here) to 1 (the peak of the passage). */
  weight: number;
}

export interface StaggerPlayer {
  id: string;
  /** 1 is the front desk. */
  desk: number;
  seat: 'outside' | 'inside';
  /** Seconds one bow lasts at most. */
  limit: number;
  /** Seconds one bow lasts comfortably. */
  comfortable: number;
  /** Instants at which this player's left hand shifts. */
  shifts: readonly number[];
}

/** A passage that is longer than one bow, and who plays it. Absent players are simply not listed. */
export interface StaggerProblem {
  /** In order of time. An instant at the very start or end is no place to change. */
  instants: readonly Instant[];
  /** Seconds, more than 0. */
  duration: number;
  players: readonly StaggerPlayer[];
  start: Direction;
  /** Direction of everybody's last stroke; null where any will do. */
  end: Direction | null;
}

/** Windows and shares a section may change. */
export interface StaggerSettings {
  /** Changes of desk partners lie at least this far apart, seconds. */
  partnerApart: number;
  /** Length of the window in which few may change, seconds; it includes its start and not its end. */
  crowdWindow: number;
  /** Share of the section that may change within one window: 1/8 strict, 1/4 ordinary. */
  crowdShare: number;
}

/** Defaults: 0.5 s and 0.25 s are chosen, not measured; 1/8 keeps the level dip under 0.5 dB for every section size (computed, see ../dip.ts). */
export const STAGGER_DEFAULTS: StaggerSettings = { partnerApart: 0.5, crowdWindow: 0.25, crowdShare: 1 / 8 };

/** Two times closer than this are the same time: decimal seconds in JSON are not exact. */
export const SAME_TIME = 1e-9;

/** Players of a section of `players` who may change within one window: 1 at least. Example: `crowdAllowed(17, 1 / 8)` is 2. */
export function crowdAllowed(players: number, share: number): number {
  return Math.max(1, Math.floor(players * share + SAME_TIME));
}
