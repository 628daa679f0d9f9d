import type { ReactNode } from 'react';
import { Fold } from '../../ui/Fold.tsx';
import { words } from '../../words/words.ts';
import { stateName, type PartState } from './states.ts';

interface Props {
  states: readonly PartState[];
  from: number;
  to: number;
  number(ordinal: number): string;
  onChoose(which: 'from' | 'to', seq: number): void;
}

/** Every state with its sentence, the latest first; one is chosen as before and one as after. */
export function StatesList({ states, from, to, number, onChoose }: Props): ReactNode {
  const chosen = { from, to };
  return (
    <Fold word={words.revisions.list} className="states-list" of="states">
      <ol>
        {states.toReversed().map((state) => {
          const name = stateName(state, number);
          return (
            <li key={state.seq}>
              {(['from', 'to'] as const).map((which) => {
                const word = which === 'from' ? words.revisions.before : words.revisions.after;
                return (
                  <label key={which} className="tick">
                    <input type="radio" name={which} checked={chosen[which] === state.seq} aria-label={words.revisions.choose(word, name)} onChange={() => onChoose(which, state.seq)} /> {word}
                  </label>
                );
              })}
              <span>
                {name}
                {state.revision?.why ? `: ${state.revision.why}` : ''}
              </span>
            </li>
          );
        })}
      </ol>
    </Fold>
  );
}
