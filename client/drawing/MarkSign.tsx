import type { ReactNode } from 'react';
import { halfWidthOf, heightOf, isLettered, SOLID, STROKES, type Stroke } from '../../core/engraving/marks/figures.ts';
import type { MarkState } from '../../core/engraving/marks/placeMarks.ts';
import { Pencil } from './Pencil.tsx';

function Inked({ stroke, x, y, scale }: { stroke: Stroke; x: number; y: number; scale: number }): ReactNode {
  const place = `translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${scale})`;
  if (isLettered(stroke)) {
    return (
      <text className="figure" x={x.toFixed(2)} y={y.toFixed(2)} fontSize={(2.35 * scale).toFixed(2)} textAnchor="middle">
        {stroke}
      </text>
    );
  }
  const solid = SOLID[stroke];
  return solid ? <path className="inked" transform={place} d={solid} /> : <path className="inkstroke" transform={place} d={STROKES[stroke]} />;
}

function Strike({ x, y, half, height }: { x: number; y: number; half: number; height: number }): ReactNode {
  return <path className="strike" d={`M${(x - half - 0.45).toFixed(2)} ${(y - 0.1).toFixed(2)}L${(x + half + 0.4).toFixed(2)} ${(y - height + 0.2).toFixed(2)}`} />;
}

/** One sign in one of its states, baseline at (x, y), in staff spaces. */
export function MarkSign({ stroke, state, x, y, scale = 1 }: { stroke: Stroke; state: MarkState; x: number; y: number; scale?: number }): ReactNode {
  if (state === 'adopted') return <Inked stroke={stroke} x={x} y={y} scale={scale} />;
  if (state === 'proposed') return <Pencil stroke={stroke} x={x} y={y} scale={scale} />;
  if (state === 'private') {
    return (
      <g>
        <Pencil stroke={stroke} x={x} y={y} scale={scale * 0.86} className="own" />
        <path className="ownline" d={`M${(x - 0.75).toFixed(2)} ${(y + 0.5).toFixed(2)}h1.55`} />
      </g>
    );
  }
  return (
    <g>
      <Pencil stroke={stroke} x={x} y={y} scale={scale} className="aside" />
      <Strike x={x} y={y} half={halfWidthOf(stroke) * scale} height={heightOf(stroke) * scale} />
    </g>
  );
}

/** Words over a note: upright and heavy in ink, slanted in pencil. */
export function MarkWords({ text, state, x, y }: { text: string; state: MarkState; x: number; y: number }): ReactNode {
  return (
    <text className={`markwords ${state}`} x={x.toFixed(2)} y={y.toFixed(2)} fontSize="1.9">
      {text}
    </text>
  );
}
