import { leadingOf, stepRun } from '../../tools/run/run.ts';
import { words } from '../../words/words.ts';
import type { Proposal } from '../../../core/agreement/state.ts';
import { isPrincipal, type Desk } from './desk.ts';
import { openRanges, slipsAt } from './openMeasures.ts';
import { measureName, slipName } from './sentence.ts';

/** The next open measure and the slip that leads there, with the sentence that says so; at the end the sentence alone. */
export function runOn(desk: Desk, here: number): { to: number | null; slip: string | null; sentence: string } {
  const open = openRanges(desk.state).map(({ from }) => from);
  const step = stepRun(desk.run, open, here);
  desk.setRun(step.run);
  if (step.to === null) return { to: null, slip: null, sentence: step.of ? words.run.end(step.of, step.decided, step.of - step.decided) : words.stand.nothingOpen };
  const slips = slipsAt(desk.state, step.to);
  const leading = leadingOf(slips, step.to)!;
  const name = slipName(desk, leading.slip);
  const lies = slips.length > 1 ? words.run.leads(name, leading.plus, leading.minus) : words.run.lies(name, leading.plus, leading.minus);
  const can = isPrincipal(desk) ? words.run.inkOrOn : words.run.voteOrOn;
  return { to: step.to, slip: leading.slip.id, sentence: [words.run.at(measureName(desk, step.to), step.at, step.of), lies, can].join(' ') };
}

/** What is said once a slip is inked in: what still lies there, and whether another open measure waits. */
export function inkedSentence(desk: Desk, inked: Proposal, measure: number): string {
  const rest = slipsAt(desk.state, measure).filter(({ id }) => id !== inked.id);
  const elsewhere = openRanges(desk.state).filter(({ from, slips }) => from !== measure && slips.some(({ id }) => id !== inked.id)).length;
  const still = rest.length ? words.run.still(rest.map((slip) => slipName(desk, slip)).join(', ')) : '';
  return [words.run.inked(slipName(desk, inked), inked.marks.length), still, elsewhere ? words.run.goOn(elsewhere) : words.run.last].filter(Boolean).join(' ');
}
