import type { ReactNode } from 'react';
import { Choice } from '../../ui/Choice.tsx';
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

/** The two states that are compared, each chosen out of all, the latest first; and every state with its reason. */
export function StatesList({ states, from, to, number, onChoose }: Props): ReactNode {
  const latestFirst = states.toReversed();
  const options = latestFirst.map((state) => ({ value: String(state.seq), word: stateName(state, number) }));
  return (
    <>
      <p className="chosen-line">
        <Choice label={words.revisions.before} options={options} value={String(from)} onChoose={(seq) => onChoose('from', Number(seq))} />
      </p>
      <p className="chosen-line">
        <Choice label={words.revisions.after} options={options} value={String(to)} onChoose={(seq) => onChoose('to', Number(seq))} />
      </p>
      <Fold word={words.revisions.list} className="states-list" of="states">
        <ol>
          {latestFirst.map((state) => (
            <li key={state.seq}>
              {stateName(state, number)}
              {state.revision?.why ? `: ${state.revision.why}` : ''}
            </li>
          ))}
        </ol>
      </Fold>
    </>
  );
}
