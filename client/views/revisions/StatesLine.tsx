import type { ReactNode } from 'react';
import { words } from '../../words/words.ts';
import type { PartState } from './states.ts';

const STEP = 2.4;
const MIDDLE = 3;

/** All states on one line: a thick bar where ink came, a thin one where the part moved on; the two compared stand in brackets. */
export function StatesLine({ states, from, to, onChoose }: { states: readonly PartState[]; from: number; to: number; onChoose(seq: number): void }): ReactNode {
  const width = (states.length + 1) * STEP;
  const x = (at: number): number => (at + 1) * STEP;
  const at = (seq: number): number => x(states.findIndex((state) => state.seq === seq));
  return (
    <div className="states-scroll" role="group" aria-label={words.revisions.list} tabIndex={0}>
      <svg className="music states-line" viewBox={`0 0 ${width} 6`} role="img" aria-label={words.revisions.picture(states.length)} style={{ width: `calc(${width} * var(--sp))` }}>
        <path className="ground" d={`M0 ${MIDDLE}H${width}`} />
        {states.map(({ seq, revision }, i) => (
          <g key={seq} data-state={seq} onClick={() => onChoose(seq)}>
            <rect className={seq === from || seq === to ? 'caret' : 'hit'} x={x(i) - STEP / 2} y={0.2} width={STEP} height={5.6} />
            <path className={revision?.kind === 'inked' || revision?.kind === 'restored' ? 'bar' : 'thin'} d={`M${x(i)} ${MIDDLE - 1.4}V${MIDDLE + 1.4}`} />
            {revision?.kind === 'restored' ? <path className="thin" d={`M${x(i) - 0.7} ${MIDDLE - 2}H${x(i) + 0.7}`} /> : null}
          </g>
        ))}
        <path className="bracket" d={`M${at(from) - 0.3} .6H${at(from) - 0.8}V5.4H${at(from) - 0.3}M${at(to) + 0.3} .6H${at(to) + 0.8}V5.4H${at(to) + 0.3}`} />
      </svg>
    </div>
  );
}
