import type { StaggerPlan } from '../../core/bowing/stagger/plan.ts';
import type { PlanRequest } from '../../core/check/sectionPlan.ts';
import type { Mark } from '../../core/music/mark.ts';

/** Which notes' bow changes are to be shared out, among whom, and what stands already. */
export type PlanQuestion = Omit<PlanRequest, 'part' | 'start' | 'end'>;

/** A hard rule of the section that the plan does not keep. */
export interface BrokenHere extends Omit<StaggerPlan['broken'][number], 'text'> {
  /** Ordinal of the measure it happens in. */
  measure: number;
}

/** Who changes when, as marks on each seat's part. */
export interface Planned extends Pick<StaggerPlan, 'feasible' | 'provedInfeasible' | 'cost' | 'bound'> {
  /** Ordinals of the first and last measure. */
  from: number;
  to: number;
  /** Seconds. */
  duration: number;
  broken: BrokenHere[];
  players: number;
  /** How many may change within `crowdWindow` seconds. */
  allowed: number;
  crowdWindow: number;
  changes: number;
  /** Only what does not stand already. */
  marks: Mark[];
}

export type PlanAnswer = { refusal: string } | { planned: Planned };
