import { readFile } from 'node:fs/promises';
import { hidingAdvice } from '../../core/bowing/dip.ts';
import { staggerPlan } from '../../core/bowing/stagger/plan.ts';
import { readStaggerFile } from './staggerFile.ts';

export const name = 'stagger';

export const usage = 'stagger PLAN.json   who of the section changes bow when; prints JSON (exit 1: the rules cannot all hold, 2: the file needs correcting)';

/** Runs `bowline stagger PLAN.json`. Returns the exit code: 0 planned, 1 not all rules hold (the nearest plan is printed), 2 bad input. */
export async function run(args: string[]): Promise<number> {
  const [path] = args;
  if (path === undefined || args.length !== 1) {
    process.stderr.write(`Name one plan file. Usage: bowline ${usage}\n`);
    return 2;
  }
  let text: string;
  try {
    text = await readFile(path, 'utf8');
  } catch (cause) {
    process.stderr.write(`${path} could not be read (${(cause as NodeJS.ErrnoException).code}): check the name and that you may read it.\n`);
    return 2;
  }
  const read = readStaggerFile(text);
  if ('bad' in read) {
    process.stderr.write(`${path}: ${read.bad.text}\n`);
    return 2;
  }
  const { provedInfeasible, ...plan } = staggerPlan(read.problem);
  process.stdout.write(`${JSON.stringify(plan)}\n`);
  if (!plan.feasible && !provedInfeasible) process.stderr.write('No plan that holds every rule was found; it is not proved that there is none. The nearest one found is printed.\n');
  const advice = hidingAdvice(read.problem.players.length);
  if (advice) process.stderr.write(`${advice}\n`);
  return plan.feasible ? 0 : 1;
}
