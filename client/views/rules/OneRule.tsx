import type { ReactNode } from 'react';
import type { RulePage } from '../../../core/check/rulePages.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import { exampleOf } from './families.ts';

/** One rule as a reader sees it: what holds, why, where it comes from and what it says. */
export function OneRule({ rule }: { rule: RulePage }): ReactNode {
  return (
    <article data-rule={rule.id}>
      <h2>{rule.summary}</h2>
      <p>{rule.why}</p>
      <h3>{words.rules.weight}</h3>
      <p>{words.rules.weights[rule.severity]}</p>
      <h3>{words.rules.says}</h3>
      <ul>
        {Object.entries(rule.messages).map(([key, message]) => (
          <li key={key}>{exampleOf(message)}</li>
        ))}
      </ul>
      <h3>{words.rules.source}</h3>
      <ul>
        {rule.source.map((key) => (
          <li key={key}>{words.rules.sources[key]}</li>
        ))}
      </ul>
      <p>
        <PlaceLink to={{ at: 'rules', rule: null }}>{words.rules.all}</PlaceLink>
      </p>
    </article>
  );
}
