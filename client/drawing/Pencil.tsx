import type { ReactNode } from 'react';
import { STROKES, type Stroke } from '../../core/engraving/marks/figures.ts';

/** Two passes of one stroke, the second thinner and a hair off, so that it reads as soft lead. */
export function Pencil({ stroke, x = 0, y = 0, scale = 1, className = '' }: { stroke: Stroke; x?: number; y?: number; scale?: number; className?: string }): ReactNode {
  return (
    <g className={`pencil ${className}`} transform={`translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${scale}) skewX(-7)`}>
      <path d={STROKES[stroke]} />
      <path className="grain" d={STROKES[stroke]} transform="translate(.05 .03)" />
    </g>
  );
}

/** A sign on a key of the ledge. */
export function SignPicture({ stroke }: { stroke: Stroke }): ReactNode {
  return (
    <svg viewBox="-1.5 -2 3 2.4" aria-hidden="true">
      <Pencil stroke={stroke} />
    </svg>
  );
}
