import { hidingAdvice } from '../../core/bowing/dip.ts';
import { staggerPlan } from '../../core/bowing/stagger/plan.ts';
import { readArguments } from './arguments.ts';
import type { Command } from './command.ts';
import { printJson } from './output.ts';
import { readStaggerFile } from './staggerFile.ts';

export const stagger: Command = {
  name: 'stagger',
  usage: 'PLAN.json',
  summary: 'Says who of a section changes bow when in a passage longer than one bow; where the rules cannot all hold, the nearest plan and what it breaks.',
  async run(args) {
    const { file } = readArguments(stagger, args, []);
    const problem = await readStaggerFile(file);
    const { provedInfeasible, ...plan } = staggerPlan(problem);
    await printJson(plan);
    if (!plan.feasible && !provedInfeasible) console.error('No plan that holds every rule was found; it is not proved that there is none. The nearest one found is printed.');
    const advice = hidingAdvice(problem.players.length);
    if (advice) console.error(advice);
    return plan.feasible ? 0 : 1;
  },
};
