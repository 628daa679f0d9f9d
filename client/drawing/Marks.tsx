import { memo, type ReactNode } from 'react';
import { MarkSign, MarkWords } from './MarkSign.tsx';
import type { PlacedMarks } from '../../core/engraving/marks/placeMarks.ts';
import { Spectacles } from './Spectacles.tsx';

/** Marks over one system, placed. */
export const Marks = memo(function Marks({ placed }: { placed: PlacedMarks }): ReactNode {
  return (
    <g className="marks" aria-hidden="true">
      {placed.signs.map((sign, i) => (
        <g key={i} data-mark={sign.name} data-state={sign.state} data-on={sign.note}>
          {sign.stroke ? <MarkSign stroke={sign.stroke} state={sign.state} x={sign.x} y={sign.y} scale={sign.scale} /> : <MarkWords text={sign.words ?? ''} state={sign.state} x={sign.x} y={sign.y} />}
        </g>
      ))}
      {placed.spectacles.map(({ note, rule, lens, x, y }) => (
        <g key={`${rule}:${note}`} data-finding={rule} data-on={note}>
          <Spectacles x={x} y={y} dark={lens} />
        </g>
      ))}
    </g>
  );
});
