import { hidingAdvice } from '../../../core/bowing/dip.ts';
import type { BrokenHere, Planned } from '../../staggering/messages.ts';
import { capital } from '../../words/capital.ts';
import { words } from '../../words/words.ts';

const seconds = (value: number): string => String(Number(value.toFixed(2)));

function brokenWords({ rule, players, by, measure }: BrokenHere, { allowed, crowdWindow }: Planned, name: (ordinal: number) => string): string {
  const who = players.map((player) => words.seat.one(player));
  const where = words.inMeasures(name(measure), name(measure));
  switch (rule) {
    case 'limit':
      return words.plan.limit(who[0]!, where, seconds(by));
    case 'end':
      return words.plan.end(who[0]!);
    case 'partners':
      return words.plan.partners(who, where, seconds(by));
    case 'crowd':
      return words.plan.crowd(players.length, seconds(crowdWindow), where, allowed);
  }
}

/**
 * A plan in sentences: what it says, then each rule of the section it cannot keep and by how much, then whether a plan can hide the changes at all.
 * `name`: the printed number of a measure; `last`: no other plan is looked for any more.
 */
export function planSentences(planned: Planned, name: (ordinal: number) => string, last: boolean): { lead: string; broken: string[]; advice: string | null } {
  const { changes, players, feasible, provedInfeasible, broken, cost, bound, allowed, crowdWindow } = planned;
  const where = words.inMeasures(name(planned.from), name(planned.to));
  const best = cost - bound < 1e-6 ? ` ${words.plan.best}` : last ? ` ${words.plan.nearBest}` : '';
  const kept = words.plan.kept(changes, players, where, allowed, seconds(crowdWindow));
  return {
    lead: changes === 0 && feasible ? words.plan.oneBow(where) : feasible ? `${kept}${best}` : provedInfeasible ? words.plan.cannot(where) : last ? words.plan.notFound(where) : words.plan.notYet(where),
    broken: broken.map((one) => capital(brokenWords(one, planned, name))),
    advice: hidingAdvice(players) ?? null,
  };
}
