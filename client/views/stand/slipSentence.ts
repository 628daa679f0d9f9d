import type { Vote } from '../../../core/agreement/state.ts';
import { votesOn } from '../../tools/run/votesOn.ts';
import { words } from '../../words/words.ts';
import { slipsHere } from './commands.ts';
import type { Desk } from './desk.ts';
import { slipName } from './sentence.ts';

/** The slip in focus under the open measure: which it is, who is for and against, and my own vote. Null where none hangs. */
export function slipSentence(desk: Desk): { line: string; why: string } | null {
  const { slips, slip } = slipsHere(desk);
  const { open } = desk.caret;
  if (!slip || open === null) return null;
  const votes: Readonly<Record<string, Vote>> = slip.votes[open] ?? {};
  const { plus, minus } = votesOn(slip, open);
  const { spoken } = words;
  const line = [spoken.slip(slipName(desk, slip), slip.proposed.name, slips.indexOf(slip) + 1, slips.length), spoken.counts(plus, minus), spoken.mine[votes[desk.me.id] ?? 'none']];
  return { line: `${line[0]}: ${line[1]}; ${line[2]}.`, why: slip.why };
}
