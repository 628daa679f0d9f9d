import { useEffect, useMemo, type ReactNode } from 'react';
import type { HandMoment } from '../../../../core/fingering/explain/handPath.ts';
import { Pencil } from '../../../drawing/Pencil.tsx';
import type { Stroke } from '../../../../core/engraving/marks/figures.ts';
import type { Geometry } from '../../../../core/engraving/geometry.ts';
import { words } from '../../../words/words.ts';
import { point, useIsPointed } from '../pointed.ts';
import { PointedColumn } from '../PointedColumn.tsx';
import { handShapes, type HandNote, type HandSetting } from './handShapes.ts';

/** String lines of a note, thin and close: one for the highest, four for the lowest. */
const LINE_GAP = 0.3;
/** Room for the rule that says what differs. */
const RULED = 1;

function Sounding({ note, lit, onNote }: { note: HandNote; lit: boolean; onNote(note: string): void }): ReactNode {
  const pointed = useIsPointed(note.note);
  const begin = note.figure ? note.x + 0.9 : note.x - 0.5;
  const end = Math.max(begin + 0.4, note.end - 0.5);
  const top = note.y - ((note.lines - 1) * LINE_GAP) / 2;
  return (
    <g
      className={lit || pointed ? 'sounding lit' : 'sounding'} data-hand-note={note.note} onClick={() => onNote(note.note)}
      onPointerEnter={() => point(note.note)} onPointerLeave={() => point(null)}
    >
      <rect className="hit" x={note.x - 0.9} y={note.y - 1.1} width={Math.max(1.8, note.end - note.x)} height={2.2} />
      {Array.from({ length: note.lines }, (_, i) => (
        <path key={i} d={`M${begin} ${top + i * LINE_GAP}H${end}`} />
      ))}
      {note.figure ? (
        <>
          <circle className="ground" cx={note.x} cy={note.y} r={1} />
          <Pencil stroke={note.finger as Stroke} x={note.x} y={note.y + 0.8} scale={0.9} />
        </>
      ) : null}
    </g>
  );
}

interface Props {
  path: readonly HandMoment[];
  geometry: Geometry;
  inHand: readonly string[];
  label: string;
  onNote(note: string): void;
  /** The same object until something changes. */
  setting?: HandSetting;
  /** It hangs below the staff it is compared over: what differs is ruled along its upper edge. */
  below?: boolean;
}

/** The hand over time: its frame as a band along the strings, each note a finger and its string's lines, shifts as slopes with the slide they make. */
export function HandPicture({ path, geometry, inHand, label, onNote, setting, below = false }: Props): ReactNode {
  const shapes = useMemo(() => handShapes(path, geometry, setting), [path, geometry, setting]);
  // A picture that goes away under the pointer never hears it leave.
  useEffect(() => () => point(null), []);
  if (!shapes) return <p className="none">{words.offers.elsewhere}</p>;
  const { x0, x1, height } = shapes;
  const over = below && shapes.differs.length ? RULED : 0;
  const whole = height + (shapes.differs.length ? RULED : 0);
  const columns = shapes.notes.filter(({ note }) => inHand.includes(note)).map(({ x }) => x);
  return (
    <svg className="music hand" viewBox={`${x0} ${-over} ${x1 - x0} ${whole}`} role="img" aria-label={label} style={{ marginLeft: `calc(${x0} * var(--sp))`, width: `calc(${x1 - x0} * var(--sp))`, height: `calc(${whole} * var(--sp))` }}>
      {columns.length ? <rect className="caret" x={Math.min(...columns) - 1.1} width={Math.max(...columns) - Math.min(...columns) + 2.2} y={-over} height={whole} /> : null}
      <PointedColumn geometry={geometry} y={-over} height={whole} reach={shapes} />
      <path className="band" d={shapes.band} />
      {shapes.reaches.map((d) => (
        <path key={d} className="reach" d={d} />
      ))}
      {shapes.wedges.map(({ d, silent }) => (
        <path key={d} className={silent ? 'glide silent' : 'glide'} d={d} />
      ))}
      {shapes.ticks.map(({ y, mm }) => (
        <g key={mm} className="mm">
          <path d={`M${x1 - 3.3} ${y}h0.6`} />
          <text x={x1 - 2.5} y={y + 0.5}>
            {mm}
          </text>
        </g>
      ))}
      {shapes.differs.map(({ x0: from, x1: to }) => (
        <path key={from} className="differs" d={`M${from} ${below ? 0.3 - RULED : height + RULED - 0.3}H${to}`} />
      ))}
      {shapes.positions.map(({ x, y, position }) => (
        <text key={x} className="posname" x={x - 0.8} y={y}>
          {words.offers.position(position)}
        </text>
      ))}
      {shapes.notes.map((note) => (
        <Sounding key={note.note} note={note} lit={inHand.includes(note.note)} onNote={onNote} />
      ))}
    </svg>
  );
}
