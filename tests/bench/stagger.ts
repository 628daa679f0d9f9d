import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { staggerPlan } from '../../core/bowing/stagger/plan.ts';
import type { StaggerProblem } from '../../core/bowing/stagger/problem.ts';
import { brokenRules } from '../core/bowing/stagger/hardRules.ts';
import type { Certificate } from '../core/bowing/stagger/mip.ts';
import { problemOf } from './staggerProblems.ts';

/** Seconds HiGHS may take; more strokes than this it does not even begin to search in that time, so it is not asked. */
const LIMIT = 20;
const MOST_STROKES = 60_000;

const number = (name: string, other: number) => Number(process.argv.find((arg) => arg.startsWith(`--${name}=`))?.split('=')[1] ?? other);

function strokesIn({ instants, players, duration }: StaggerProblem): number {
  return players.reduce((sum, { limit }) => sum + 2 * instants.reduce((all, { time }) => all + instants.filter((other) => other.time > time && other.time - time <= limit).length, 0) + 2 * duration, 0);
}

function highs(seed: number): Certificate {
  const child = spawnSync(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'highsChild.ts'), String(seed), String(LIMIT)], { encoding: 'utf8', timeout: 3 * LIMIT * 1000 });
  return child.status === 0 ? (JSON.parse(child.stdout) as Certificate) : { status: 'open', cost: 0, seconds: LIMIT };
}

const gaps: number[] = [];
let [proved, equal, wrong, ruleBreaks, unsatisfiable, unproved] = [0, 0, 0, 0, 0, 0];
console.log('problem players instants | feasible cost bound gap% seconds | HiGHS cost seconds, ours/HiGHS');
for (let seed = number('from', 0); seed < number('to', 60); seed++) {
  const problem = problemOf(seed);
  const start = performance.now();
  const plan = staggerPlan(problem);
  const seconds = (performance.now() - start) / 1000;
  const broken = brokenRules(problem, plan.players);
  if (plan.feasible !== (broken.length === 0)) ruleBreaks++;
  const asked = number('highs', 1) === 1 && strokesIn(problem) <= MOST_STROKES;
  const certificate: Certificate = asked ? highs(seed) : { status: 'open', cost: 0, seconds: 0 };
  const gap = plan.feasible ? (100 * (plan.cost - plan.bound)) / plan.cost : 0;
  if (plan.feasible) gaps.push(gap);
  else {
    unsatisfiable++;
    if (!plan.provedInfeasible) unproved++;
  }
  if (certificate.status !== 'open') {
    proved++;
    if (certificate.status === 'impossible' ? !plan.feasible : plan.feasible && plan.cost === certificate.cost) equal++;
    else wrong++;
  }
  const rules = [...new Set(plan.broken.map(({ rule }) => rule))].join(' ');
  const theirs = asked ? `${certificate.status} ${certificate.cost} ${certificate.seconds.toFixed(1)} s, ${(seconds / certificate.seconds).toFixed(2)}` : 'not asked';
  console.log(`${seed} ${problem.players.length} ${problem.instants.length} | ${plan.feasible ? 'yes' : `no (${rules}${plan.provedInfeasible ? ', proved' : ''})`} ${plan.cost} ${plan.bound} ${gap.toFixed(2)} ${seconds.toFixed(1)} | ${theirs}`);
}
gaps.sort((a, b) => a - b);
console.log(`plans ${gaps.length}: at the bound ${gaps.filter((gap) => gap === 0).length}, gap <= 1 % ${gaps.filter((gap) => gap <= 1).length}, median ${gaps[Math.floor(gaps.length / 2)]?.toFixed(2)} %, worst ${gaps.at(-1)?.toFixed(2)} %`);
console.log(`no plan ${unsatisfiable}, of these without proof ${unproved}; judged otherwise by the independent reading of the rules ${ruleBreaks}`);
console.log(`HiGHS proved ${proved}: equal ${equal}, different ${wrong}`);
process.exitCode = wrong > 0 || ruleBreaks > 0 ? 1 : 0;
