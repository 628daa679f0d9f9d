import { type RulePage, rulePages } from '../../../core/check/rulePages.ts';
import { seatWords } from '../../../core/music/markWords.ts';
import { capital } from '../../words/capital.ts';
import { words } from '../../words/words.ts';

export interface Family {
  name: string;
  rules: RulePage[];
}

/** A rule in the language spoken, in its own words where that has none. */
function inWords({ messages, ...rule }: RulePage): RulePage {
  const [summary, why] = words.rulePages[rule.id] ?? [rule.summary, rule.why];
  return { ...rule, summary, why, messages: words.findings[rule.id] ?? messages };
}

/** All rules by family, families and rules in the order of their first mention. */
export function families(): Family[] {
  const found = new Map<string, RulePage[]>();
  for (const page of rulePages().map(inWords)) {
    const name = page.id.split('/')[0]!;
    found.set(name, [...(found.get(name) ?? []), page]);
  }
  return [...found].map(([name, rules]) => ({ name, rules }));
}

/** A rule's sentence with an example of a place and of players in its blanks; what depends on the music stays open. */
export const exampleOf = (message: string): string => {
  const desk = seatWords(['2o'], words.marks);
  const filled = message.replace(/\{where\}/g, words.inMeasures('46', '46')).replace(/\{[Ww]ho\}/g, (blank) => (blank === '{Who}' ? capital(desk) : desk)).replace(/\{\w+\}/g, '…');
  return capital(filled);
};
