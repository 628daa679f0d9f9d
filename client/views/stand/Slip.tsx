import { useMemo, type ReactNode } from 'react';
import { Marks } from '../../drawing/Marks.tsx';
import { placeMarks, type ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import type { EngravedSystem, Geometry } from '../../../core/engraving/geometry.ts';

interface Props {
  id: string;
  label: string;
  systemId: string;
  drawing: EngravedSystem;
  reach: { x0: number; x1: number };
  marks: readonly ShownMark[];
  selected: readonly string[];
  chosen: boolean;
  /** Strings stand under the slip, or on their own marks' side of the staff. */
  strings?: 'under' | 'own';
  onChoose(): void;
}

/** Strings of a slip stand under it; there, nothing is in their way. */
function splitStrings(marks: readonly ShownMark[]): ShownMark[] {
  return marks.map((mark) => (mark.value.kind === 'string' && mark.state === 'proposed' ? { ...mark, seats: ['1i'] } : mark));
}

function inside(geometry: Geometry, { x0, x1 }: { x0: number; x1: number }): Geometry {
  const notes = Object.fromEntries(Object.entries(geometry.notes).filter(([, { x }]) => x >= x0 && x <= x1));
  return { ...geometry, notes };
}

/** A strip of other paper under the open measure: the same engraving, note under note, with what is proposed in pencil. */
export function Slip({ id, label, systemId, drawing, reach, marks, selected, chosen, strings = 'under', onChoose }: Props): ReactNode {
  const { geometry } = drawing;
  const { x0, x1 } = reach;
  const here = useMemo(() => inside(geometry, reach), [geometry, reach]);
  const placed = useMemo(() => placeMarks(here, strings === 'own' ? marks : splitStrings(marks)), [here, marks, strings]);
  const near = geometry.near.filter((box) => box.x1 > x0 && box.x0 < x1);
  const top = Math.min(placed.top, geometry.top - 3, ...near.map(({ y0 }) => y0)) - 1;
  const bottom = Math.max(placed.bottom, geometry.bottom + 2, ...near.map(({ y1 }) => y1)) + 0.8;
  const width = x1 - x0;
  const columns = selected.flatMap((note) => here.notes[note]?.x ?? []);
  const clip = `clip-${id}`;
  return (
    <svg
      className={chosen ? 'music slip chosen' : 'music slip'} data-proposal={id} role="img" aria-label={label} onClick={onChoose}
      viewBox={`${x0} ${top} ${width} ${bottom - top}`} style={{ marginLeft: `calc(${x0} * var(--sp))`, width: `calc(${width} * var(--sp))`, height: `calc(${bottom - top} * var(--sp))` }}
    >
      <clipPath id={clip}>
        <rect x={x0} y={top} width={width} height={bottom - top} />
      </clipPath>
      <rect className="paper" x={x0} y={top + 0.25} width={width} height={bottom - top - 0.5} />
      {chosen ? <path className="chosenrule" d={`M${x0} ${top + 0.25}H${x1}`} /> : null}
      {columns.length ? <rect className="caret" x={Math.min(...columns) - 1.1} width={Math.max(...columns) - Math.min(...columns) + 2.2} y={top} height={bottom - top} /> : null}
      <g clipPath={`url(#${clip})`}>
        <use href={`#${systemId}`} />
      </g>
      <path className="slipbar" d={`M${x0 + 0.08} ${geometry.top}V${geometry.bottom}M${x1 - 0.08} ${geometry.top}V${geometry.bottom}`} />
      <path className="drop" d={`M${x0 + 0.08} ${top}V${geometry.top}M${x0 + 0.08} ${geometry.bottom}V${bottom}M${x1 - 0.08} ${top}V${geometry.top}M${x1 - 0.08} ${geometry.bottom}V${bottom}`} />
      <Marks placed={placed} />
    </svg>
  );
}
