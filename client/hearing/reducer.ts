/** What is heard: which fingering under the passage (null: as the marks have it), by whom. */
export interface What {
  /** First and last note. */
  from: string;
  to: string;
  offer: number | null;
  who: 'one' | 'section';
}

export const SLOWEST = 50;
export const PACES = [50, 60, 70, 80, 90, 100] as const;

export interface Hearing {
  state: 'ready' | 'rendering' | 'playing';
  /** What is being heard, or was last. */
  what: What | null;
  /** The fingering heard before this one, for hearing it again beside it. */
  other: number | null;
  /** Percent of the tempo, 50 to 100. */
  pace: number;
  loop: boolean;
  click: boolean;
  failed: boolean;
}

export type HearingAction =
  | { type: 'hear'; what: What }
  | { type: 'rendered' | 'failed' | 'ended' | 'stop' | 'loop' | 'click' | 'left' }
  | { type: 'pace'; pace: number };

export const startHearing: Hearing = { state: 'ready', what: null, other: null, pace: 100, loop: false, click: false, failed: false };

/** What changes the samples is worked out anew while something is heard, and waits otherwise. */
const anew = (hearing: Hearing): Hearing => (hearing.state === 'ready' ? hearing : { ...hearing, state: 'rendering' });

/** Hearing a passage: ready, being worked out, or playing. An answer that comes when nobody waits for it any more changes nothing. */
export function hearingReducer(hearing: Hearing, action: HearingAction): Hearing {
  switch (action.type) {
    case 'hear': {
      const before = hearing.what?.offer ?? null;
      return { ...hearing, state: 'rendering', what: action.what, other: before === action.what.offer ? hearing.other : before, failed: false };
    }
    case 'rendered':
      return hearing.state === 'rendering' ? { ...hearing, state: 'playing' } : hearing;
    case 'failed':
      return hearing.state === 'rendering' ? { ...hearing, state: 'ready', failed: true } : hearing;
    case 'ended':
    case 'stop':
      return { ...hearing, state: 'ready' };
    case 'left':
      return { ...hearing, state: 'ready', what: null, other: null, failed: false };
    case 'loop':
      return { ...hearing, loop: !hearing.loop };
    case 'click':
      return anew({ ...hearing, click: !hearing.click });
    case 'pace':
      return anew({ ...hearing, pace: Math.max(SLOWEST, Math.min(100, action.pace)) });
  }
}

/** Which of `count` fingerings "the other" is beside `chosen`: the one heard before it, else the first, or the second beside the first; null where there is one only. */
export function otherOf({ other, what }: Pick<Hearing, 'other' | 'what'>, chosen: number, count: number): number | null {
  const known = [what?.offer, other].find((one) => one !== null && one !== undefined && one !== chosen && one < count);
  if (known !== undefined) return known;
  return count < 2 ? null : chosen === 0 ? 1 : 0;
}
