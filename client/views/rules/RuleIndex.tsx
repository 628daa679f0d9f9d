import type { ReactNode } from 'react';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import type { Family } from './families.ts';

/** Every rule by its family: what holds, as a link to its page. */
export function RuleIndex({ families }: { families: readonly Family[] }): ReactNode {
  return families.map(({ name, rules }) => (
    <section key={name} aria-label={words.rules.families[name]}>
      <h2>{words.rules.families[name]}</h2>
      <ul>
        {rules.map(({ id, summary, severity }) => (
          <li key={id}>
            <PlaceLink to={{ at: 'rules', rule: id }}>{summary}</PlaceLink> <span className="quiet">{words.rules.severities[severity]}</span>
          </li>
        ))}
      </ul>
    </section>
  ));
}
