import type { ReactNode } from 'react';
import type { Lens } from '../../core/engraving/marks/placeMarks.ts';

/** The pencil sign for "watch here". A dark lens names the seat: left inside, right outside, as the first violins sit. */
export function Spectacles({ x = 0, y = 0, dark = 'both', scale = 1 }: { x?: number; y?: number; dark?: Lens; scale?: number }): ReactNode {
  return (
    <g className="specs" transform={`translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${scale})`}>
      <circle cx="-.82" cy="0" r=".6" className={dark === 'outside' ? '' : 'full'} />
      <circle cx=".82" cy="0" r=".6" className={dark === 'inside' ? '' : 'full'} />
      <path d="M-.24-.12Q0-.42.24-.12M-1.4-.2L-1.86-.62M1.4-.2L1.86-.62" />
    </g>
  );
}

/** Spectacles in running text. */
export function SpectaclesInline({ dark = 'both', label = '' }: { dark?: Lens; label?: string }): ReactNode {
  return (
    <svg className="inline-specs" viewBox="-2 -1 4 2" width="30" height="15" role={label ? 'img' : 'presentation'} aria-label={label || undefined}>
      <Spectacles y={0.1} dark={dark} />
    </svg>
  );
}
