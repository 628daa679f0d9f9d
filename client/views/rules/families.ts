import { type RulePage, rulePages } from '../../../core/check/rulePages.ts';
import { capital } from '../../words/capital.ts';

export interface Family {
  name: string;
  rules: RulePage[];
}

/** All rules by family, families and rules in the order of their first mention. */
export function families(): Family[] {
  const found = new Map<string, RulePage[]>();
  for (const page of rulePages()) {
    const name = page.id.split('/')[0]!;
    found.set(name, [...(found.get(name) ?? []), page]);
  }
  return [...found].map(([name, rules]) => ({ name, rules }));
}

/** A rule's sentence with an example of a place and of players in its blanks; what depends on the music stays open. */
export const exampleOf = (message: string): string => {
  const filled = message.replace(/\{where\}/g, 'measure 46').replace(/\{[Ww]ho\}/g, (blank) => (blank === '{Who}' ? 'Desk 2' : 'desk 2')).replace(/\{\w+\}/g, '…');
  return capital(filled);
};
