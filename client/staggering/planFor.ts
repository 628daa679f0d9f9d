import { type StaggerPlan, staggerSteps } from '../../core/bowing/stagger/plan.ts';
import { crowdAllowed } from '../../core/bowing/stagger/problem.ts';
import { sectionProblem, type SectionProblem } from '../../core/check/sectionPlan.ts';
import { isStringPart, type Part } from '../../core/music/part.ts';
import type { PlanAnswer, PlanQuestion } from './messages.ts';

/** Ordinal of the measure a second of the passage lies in, as near as the places to change tell. */
function measureAt({ problem, places, from }: SectionProblem, second: number): number {
  const at = problem.instants.findLastIndex(({ time }) => time <= second);
  return places[at]?.measure ?? from;
}

const asPlanned = (asked: SectionProblem, { feasible, provedInfeasible, cost, bound, broken, players }: StaggerPlan): PlanAnswer => {
  const { problem, settings, from, to } = asked;
  const plan = players.map(({ changes }) => changes);
  return {
    planned: {
      feasible, provedInfeasible, cost, bound, from, to,
      duration: problem.duration,
      broken: broken.map(({ rule, players, time, by }) => ({ rule, players, time, by, measure: measureAt(asked, time) })),
      players: problem.players.length,
      allowed: crowdAllowed(problem.players.length, settings.crowdShare),
      crowdWindow: settings.crowdWindow,
      changes: plan.flat().length,
      marks: asked.marksFor(plan),
    },
  };
};

/**
 * Who changes bow when in a passage, as marks; or, in a sentence, why it is no passage to be shared out. `onSoFar`: each better plan on the way.
 * Throws where the part names no string instrument.
 */
export function planFor(part: Part, question: PlanQuestion, onSoFar: (found: PlanAnswer) => void): PlanAnswer {
  if (!isStringPart(part)) throw new Error('The part names no string instrument');
  const found = sectionProblem({ ...question, part });
  if ('refusal' in found) return { refusal: found.refusal.text };
  const { planned } = found;
  let best: StaggerPlan | undefined;
  for (const step of staggerSteps(planned.problem, planned.settings)) {
    // A step that changes nothing need not be drawn again.
    if (!best || step.cost !== best.cost || step.feasible !== best.feasible) onSoFar(asPlanned(planned, step));
    best = step;
  }
  return asPlanned(planned, best!);
}
