import type { ReactNode } from 'react';
import { words } from '../../words/words.ts';

export function Legend(): ReactNode {
  return (
    <p className="legend">
      <span>
        <svg viewBox="0 0 5 2" width="44" height="18" aria-hidden="true">
          <path className="outs" d="M0 1H4.6" />
          <circle className="co" cx="2.3" cy="1" r=".52" />
        </svg>
        {words.section.outside}
      </span>
      <span>
        <svg viewBox="0 0 5 2" width="44" height="18" aria-hidden="true">
          <path className="ins" d="M0 1H4.6" />
          <circle className="ci" cx="2.3" cy="1" r=".52" />
        </svg>
        {words.section.inside}
      </span>
      <span>{words.section.legend}</span>
    </p>
  );
}
