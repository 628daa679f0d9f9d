import type { ReactNode } from 'react';
import type { PieceProgress as Progress } from '../../../../core/agreement/wire/piece.ts';
import { Spectacles } from '../../../drawing/Spectacles.tsx';
import { words } from '../../../words/words.ts';
import { GrowingStaff } from '../GrowingStaff.tsx';

/** A staff with a bar for each part, drawn as far as it is read; the spectacles lie over the part being read. */
export function PieceProgress({ done, of, reading }: Progress): ReactNode {
  return <GrowingStaff done={done} of={of} label={words.piece.picture(done, of)} over={(x) => (reading === null ? null : <Spectacles x={x} y={2} />)} />;
}
