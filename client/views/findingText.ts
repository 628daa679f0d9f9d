import type { Finding } from '../../core/check/finding.ts';
import { seatWords } from '../../core/music/markWords.ts';
import { capital } from '../words/capital.ts';
import { words } from '../words/words.ts';

/** The sentence of a finding in the language spoken, in English where that has none; `name` gives the printed number of a measure by its ordinal. */
export function findingText({ rule, message, text, facts, measure, seats }: Pick<Finding, 'rule' | 'message' | 'text' | 'facts' | 'measure' | 'seats'>, name: (ordinal: number) => string): string {
  const sentence = words.findings[rule]?.[message];
  if (sentence === undefined) return text;
  const who = seatWords(seats, words.marks);
  const given: Record<string, string> = { where: words.inMeasures(name(measure), name(measure)), who, Who: capital(who) };
  return capital(sentence.replace(/\{(\w+)\}/g, (_, blank: string) => given[blank] ?? words.fact(facts[blank]!, name)));
}

/** Why a rule holds, in the language spoken; `own` are its own words, for a language that has none. */
export const whyText = (rule: string, own: string | undefined): string => words.rulePages[rule]?.[1] ?? own ?? '';
