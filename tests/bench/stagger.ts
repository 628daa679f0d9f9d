import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { staggerPlan } from '../../core/bowing/stagger/plan.ts';
import type { StaggerPlan } from '../../core/bowing/stagger/plan.ts';
import type { StaggerProblem } from '../../core/bowing/stagger/problem.ts';
import { brokenRules } from '../core/bowing/stagger/hardRules.ts';
import type { Certificate } from '../core/bowing/stagger/mip.ts';
import { canGoOneByOne } from '../core/bowing/stagger/oneByOne.ts';
import { problemOf } from './staggerProblems.ts';

/**
 * Plans 60 seeded passages and lays each beside what HiGHS proves in 20 s. `--only A-B`: these problems only. `--no-highs`: without it. `--all`: asked even of the largest.
 * Rows: problem, players, instants, ours (cost, bound, gap in %, seconds), HiGHS (word, cost, seconds), ratio of the times, verdict. "no plan, both": HiGHS says so too, or where it stays open every order of changes has been tried (oneByOne.ts).
 */
const LIMIT = 20;
/** Above so many strokes HiGHS does not begin to search within the limit: it is not asked unless `--all`. */
const MOST_STROKES = 60_000;
const only = process.argv[process.argv.indexOf('--only') + 1];
const [first, last] = process.argv.includes('--only') ? only!.split('-').map(Number) : [0, 59];

function isAsked({ instants, players, duration }: StaggerProblem): boolean {
  if (process.argv.includes('--no-highs')) return false;
  const strokes = players.reduce((sum, { limit }) => sum + 2 * instants.reduce((all, { time }) => all + instants.filter((other) => other.time > time && other.time - time <= limit).length, 0) + 2 * duration, 0);
  return strokes <= MOST_STROKES || process.argv.includes('--all');
}

/** Problems whose text is too long for the solver's own memory end without a word: open. */
function highs(seed: number): Certificate {
  const child = spawnSync(process.execPath, ['--import', 'tsx', join(import.meta.dirname, 'highsChild.ts'), String(seed), String(LIMIT)], { encoding: 'utf8', timeout: 8 * LIMIT * 1000 });
  return child.status === 0 ? (JSON.parse(child.stdout) as Certificate) : { status: 'open', cost: 0, seconds: LIMIT };
}

type Verdict = 'equal' | 'within 1 %' | 'no plan, both' | 'no plan, proved' | 'GAP' | 'DEARER' | 'RULE BROKEN' | 'UNDECIDED';

/** Whether there is no plan by somebody else's word: HiGHS's, or every order of changes tried. */
function isImpossible(problem: StaggerProblem, plan: StaggerPlan, { status }: Certificate): boolean {
  return status === 'impossible' || (!plan.feasible && status === 'open' && problem.players.length < 16 && !canGoOneByOne(problem));
}

function verdictOf(problem: StaggerProblem, plan: StaggerPlan, broken: readonly string[], gap: number, certificate: Certificate): Verdict {
  const { status, cost } = certificate;
  if (plan.feasible !== (broken.length === 0) || plan.bound > plan.cost) return 'RULE BROKEN';
  if (isImpossible(problem, plan, certificate)) return plan.feasible ? 'RULE BROKEN' : 'no plan, both';
  if (!plan.feasible) return plan.provedInfeasible && status !== 'proved' ? 'no plan, proved' : 'UNDECIDED';
  if (status === 'proved') return plan.cost === cost && plan.bound <= cost ? 'equal' : 'DEARER';
  return gap <= 1 ? 'within 1 %' : 'GAP';
}

const verdicts = new Map<Verdict, number>();
const gaps: number[] = [];
const ratios: number[] = [];
const row = (cells: readonly (string | number)[]) => console.log(cells.map((cell, k) => String(cell).padStart([2, 7, 8, 6, 6, 6, 7, 10, 6, 7, 6, 0][k]!)).join(' '));
row(['no', 'players', 'instants', 'cost', 'bound', 'gap %', 'ours s', 'HiGHS', 'cost', 'HiGHS s', 'ratio', ' verdict']);
for (let seed = first!; seed <= (last ?? first!); seed++) {
  const problem = problemOf(seed);
  const start = performance.now();
  const plan = staggerPlan(problem);
  const seconds = (performance.now() - start) / 1000;
  const asked = isAsked(problem);
  const certificate: Certificate = asked ? highs(seed) : { status: 'open', cost: 0, seconds: 0 };
  const gap = plan.feasible ? (100 * (plan.cost - plan.bound)) / plan.cost : 0;
  const verdict = verdictOf(problem, plan, brokenRules(problem, plan.players), gap, certificate);
  verdicts.set(verdict, (verdicts.get(verdict) ?? 0) + 1);
  if (plan.feasible) gaps.push(gap);
  if (certificate.status !== 'open') ratios.push(seconds / certificate.seconds);
  const rules = [...new Set(plan.broken.map(({ rule }) => rule))].join(' ');
  row([seed, problem.players.length, problem.instants.length, plan.feasible ? plan.cost : '-', plan.feasible ? plan.bound : '-', plan.feasible ? gap.toFixed(2) : '-', seconds.toFixed(1), asked ? certificate.status : 'not asked', certificate.status === 'proved' ? certificate.cost : '-', asked ? certificate.seconds.toFixed(1) : '-', asked ? (seconds / certificate.seconds).toFixed(2) : '-', ` ${verdict}${rules ? ` (cannot hold: ${rules})` : ''}`]);
}
const middle = (list: readonly number[]) => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? NaN;
console.log(`\n${[...verdicts].map(([verdict, count]) => `${verdict} ${count}`).join(' · ')}`);
console.log(`plans ${gaps.length}: at the bound ${gaps.filter((gap) => gap === 0).length}, gap <= 1 % ${gaps.filter((gap) => gap <= 1).length}, worst ${Math.max(0, ...gaps).toFixed(2)} %`);
if (ratios.length > 0) console.log(`HiGHS decided ${ratios.length}: our time over its time, median ${middle(ratios).toFixed(2)}`);
process.exitCode = (['GAP', 'DEARER', 'RULE BROKEN', 'UNDECIDED'] as const).some((verdict) => verdicts.has(verdict)) ? 1 : 0;
