import { memo, useMemo, type MouseEvent, type ReactNode } from 'react';
import { Marks } from '../../drawing/Marks.tsx';
import { placeMarks, type ShownFinding, type ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import { UNITS, type EngravedSystem } from '../../../core/engraving/geometry.ts';
import { TalkSign } from '../../drawing/TalkSign.tsx';
import { words } from '../../words/words.ts';
import { HitAreas } from './HitAreas.tsx';
import { PointedColumn } from './PointedColumn.tsx';
import { SoundingColumn } from './SoundingColumn.tsx';
import { extentOf } from '../../../core/engraving/marks/extent.ts';
import { sameProps } from './sameProps.ts';

export interface Bracket {
  from: number;
  to: number;
  letters: string;
}

export interface SystemProps {
  id: string;
  drawing: EngravedSystem;
  number: string;
  marks: readonly ShownMark[];
  findings: readonly ShownFinding[];
  brackets: readonly Bracket[];
  /** Names of colleagues by the measure they look at. */
  people: readonly { measure: number; names: string }[];
  /** Measures with talk I have not read. */
  unread: readonly number[];
  /** Notes in hand that stand in this system, in order. */
  selected: readonly string[];
  label: (note: string) => string;
  onNote(note: string, extend: boolean): void;
  onMeasure(measure: number): void;
  spoken: [from: string, to: string];
}

/** Staff spaces. A line so short has no margin for its number: it stands over the clef. */
const NARROW = 60;

function Corners({ x0, x1, y, arm = 1.2 }: { x0: number; x1: number; y: number; arm?: number }): ReactNode {
  return <path className="corner" d={`M${x0} ${y + arm}V${y}h${arm * 1.4}M${x1 - arm * 1.4} ${y}H${x1}v${arm}`} />;
}

/** One engraved system with everything the section wrote over it. Bow marks stand above, the rosin lies under the notes in hand. */
export const SystemView = memo(function SystemView(props: SystemProps): ReactNode {
  const { id, drawing, number, marks, findings, brackets, people, selected, unread } = props;
  const { geometry } = drawing;
  const placed = useMemo(() => placeMarks(geometry, marks, findings), [geometry, marks, findings]);
  const here = brackets.flatMap((bracket) => {
    const covered = geometry.measures.filter(({ ordinal }) => ordinal >= bracket.from && ordinal <= bracket.to);
    return covered.length ? [{ ...bracket, x0: Math.min(...covered.map(({ x0 }) => x0)), x1: Math.max(...covered.map(({ x1 }) => x1)) }] : [];
  });
  const { up, down, lift, drop } = extentOf(geometry, placed, here.length + unread.length > 0);
  const top = geometry.top - up;
  const bracketY = Math.min(placed.top, geometry.top) - 2.6;
  const columns = selected.map((note) => geometry.notes[note]!.x);
  const box = `0 ${top.toFixed(2)} ${geometry.width.toFixed(2)} ${(up + down + geometry.bottom - geometry.top).toFixed(2)}`;
  const style = { width: `calc(${geometry.width} * var(--sp))`, height: `calc(${up + down + geometry.bottom - geometry.top} * var(--sp))`, '--lift': `${(-lift * UNITS).toFixed(0)}px`, '--drop': `${(drop * UNITS).toFixed(0)}px` };
  const onDoubleClick = (event: MouseEvent) => {
    const measure = Number((event.target as Element).closest('[data-measure]')?.getAttribute('data-measure'));
    if (measure) props.onMeasure(measure);
  };
  return (
    <svg className="music system" viewBox={box} style={style} role="group" aria-label={words.staff.label(...props.spoken)} onDoubleClick={onDoubleClick}>
      {columns.length ? <rect className="caret" x={Math.min(...columns) - 1.1} width={Math.max(...columns) - Math.min(...columns) + 2.2} y={top + 0.4} height={up + down + 3.6} /> : null}
      <PointedColumn geometry={geometry} y={top + 0.4} height={up + down + 3.6} />
      <SoundingColumn geometry={geometry} y={top + 0.4} height={up + down + 3.6} />
      <g id={id} className="sys" transform={`scale(${1 / UNITS})`} aria-hidden="true" dangerouslySetInnerHTML={{ __html: drawing.inner }} />
      <text className="barno" {...(geometry.width < NARROW ? { x: 0, y: geometry.top - 2.2 } : { x: -1, y: geometry.top - 0.6, textAnchor: 'end' })} aria-hidden="true">
        {number}
      </text>
      <Marks placed={placed} />
      <g aria-hidden="true">
        {here.map(({ from, letters, x0, x1 }) => (
          <g key={from} data-open={from}>
            <Corners x0={x0 + 0.5} x1={x1 - 0.5} y={bracketY} />
            <text className="slipname" x={x0 + 2.9} y={bracketY + 1}>
              {letters}
            </text>
          </g>
        ))}
        {geometry.measures.filter(({ ordinal }) => unread.includes(ordinal)).map(({ ordinal, x1 }) => (
          <TalkSign key={ordinal} x={x1 - 4.4} y={bracketY} measure={ordinal} />
        ))}
        {people.filter(({ measure }) => geometry.measures.some(({ ordinal }) => ordinal === measure)).map(({ measure, names }) => (
          <text key={measure} className="present" x={(geometry.measures.find(({ ordinal }) => ordinal === measure)?.x0 ?? 0) + 0.6} y={geometry.bottom + down - 0.6}>
            {names}
          </text>
        ))}
      </g>
      <HitAreas geometry={geometry} selected={selected} label={props.label} onNote={props.onNote} onMeasure={props.onMeasure} top={top} height={up + down + 4} />
    </svg>
  );
}, sameProps);
