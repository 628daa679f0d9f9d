import type { ReactNode } from 'react';
import type { PieceProgress as Progress } from '../../../../core/agreement/wire/piece.ts';
import { Spectacles } from '../../../drawing/Spectacles.tsx';
import { words } from '../../../words/words.ts';

const BAR = 5.5;
const UNIT = 8;

/** A staff with a bar for each part, drawn as far as it is read; the spectacles lie over the part being read. */
export function PieceProgress({ done, of, reading }: Progress): ReactNode {
  const width = of * BAR + 0.8;
  const at = (part: number) => 0.4 + part * BAR;
  return (
    <svg className="stage-staff piece-progress" viewBox={`0 -.2 ${width} 4.4`} width={width * UNIT} height={4.4 * UNIT} role="img" aria-label={words.piece.picture(done, of)}>
      {Array.from({ length: of + 1 }, (_, part) => (
        <path key={part} className={part <= done ? 'bar' : 'yet'} d={part <= done ? `M${at(part)} 0V4` : `M${at(part)} 3.2V4`} />
      ))}
      {done ? <path className="stafflines" d={[0, 1, 2, 3, 4].map((line) => `M.4 ${line}H${at(done)}`).join('')} /> : null}
      <path className="ground" d={`M${at(done)} 4H${at(of)}`} />
      {reading === null ? null : <Spectacles x={at(done) + BAR / 2} y={2} />}
    </svg>
  );
}
