import type { ReactNode } from 'react';
import { words } from '../../../words/words.ts';
import type { Making } from './usePrints.ts';

const WIDTH = 40;
const UNIT = 8;

/** A staff drawn as far as the copies are made. */
export function CopiesStaff({ made, of }: Making): ReactNode {
  const end = 0.4 + (WIDTH * made) / of;
  return (
    <svg className="stage-staff" viewBox={`0 -.2 ${WIDTH + 0.8} 4.4`} width={(WIDTH + 0.8) * UNIT} height={4.4 * UNIT} role="img" aria-label={words.prints.picture(made, of)}>
      <path className="bar" d="M.4 0V4" />
      {made ? <path className="stafflines" d={[0, 1, 2, 3, 4].map((line) => `M.4 ${line}H${end}`).join('')} /> : null}
      {made ? <path className="bar last" d={`M${end} 0V4`} /> : null}
      <path className="ground" d={`M${end} 4H${WIDTH + 0.4}`} />
    </svg>
  );
}
