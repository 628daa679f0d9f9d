import { useMemo, type ReactNode } from 'react';
import { Pencil } from '../../../drawing/Pencil.tsx';
import type { Stroke } from '../../../../core/engraving/marks/figures.ts';
import { words } from '../../../words/words.ts';
import { acrossAt, type BoardFinger, type BoardShapes } from './boardShapes.ts';

/** Staff spaces from nut to bridge, and between the outer strings at the nut: across, the strings lie further apart than to scale, or they could not be told apart. */
const LONG = 38;
const APART = 3.2;
const MARGIN = { left: 1.6, right: 4, top: 4.4, bottom: 4 };
/** Half a finger, and how far its tip lies before the middle of the string. */
const HALF = 0.85;

const at = (...values: number[]): string => values.map((value) => value.toFixed(2)).join(' ');

function Finger({ finger, x, y, sounding }: { finger: BoardFinger['finger']; x: number; y: number; sounding: boolean }): ReactNode {
  const root = -APART / 2 - MARGIN.top + 0.6;
  const lean = 0.7;
  return (
    <g className={sounding ? 'tip sounding' : 'tip'} data-finger={finger}>
      <path d={`M${at(x - HALF + lean, root)}L${at(x - HALF, y)}A${HALF} ${HALF} 0 0 0 ${at(x + HALF, y)}L${at(x + HALF + lean, root)}`} />
      <Pencil stroke={finger as Stroke} x={x} y={y + 0.55} scale={0.72} />
    </g>
  );
}

/** The fingerboard with the hand over it: along the string to scale in mm, the frame in rosin, fingers from the side of the highest string, the sounding one black. */
export function BoardPicture({ shapes, position, label }: { shapes: BoardShapes; position: string; label: string }): ReactNode {
  const drawn = useMemo(() => {
    const along = LONG / shapes.length;
    const across = APART / (shapes.strings[3]!.nut - shapes.strings[0]!.nut);
    return { x: (mm: number) => mm * along, y: (string: number, mm: number) => acrossAt(shapes, string, mm) * across };
  }, [shapes]);
  const { x, y } = drawn;
  const { length, end, strings, frame, fingers, string, open, reach, ticks } = shapes;
  const edge = 0.6;
  const quad = (from: number, to: number): string => `M${at(x(from), y(1, from) - edge)}L${at(x(to), y(1, to) - edge)}L${at(x(to), y(4, to) + edge)}L${at(x(from), y(4, from) + edge)}Z`;
  const bottom = y(4, length) + edge;
  const thickest = strings[3]!.thick;
  const tip = ({ mm, sounding, finger }: BoardFinger): number => y(sounding || finger === 'thumb' ? string : Math.max(1, string - 1), mm) - (sounding ? 0.1 : 0.3);
  const rule = bottom + 1.7;
  const top = -APART / 2 - MARGIN.top;
  return (
    <svg className="music board" viewBox={at(-MARGIN.left, top, LONG + MARGIN.left + MARGIN.right, rule + MARGIN.bottom - 1.7 - top)} role="img" aria-label={label}>
      <path className="wood" d={quad(0, end)} />
      <path className="frame" d={quad(frame.low, frame.high)} />
      {strings.map(({ name, thick }, i) => (
        <g key={name} className={i + 1 === string ? 'string here' : 'string'}>
          <path d={`M${at(0, y(i + 1, 0))}L${at(LONG, y(i + 1, length))}`} style={{ strokeWidth: 0.08 + (0.16 * thick) / thickest }} />
          <text x={LONG + 0.7} y={y(i + 1, length) + 0.55}>
            {name}
          </text>
        </g>
      ))}
      <path className="nut" d={`M0 ${at(y(1, 0) - edge)}V${at(y(4, 0) + edge)}`} />
      <path className="bridge" d={`M${LONG} ${at(y(1, length) - edge)}V${at(y(4, length) + edge)}`} />
      {fingers.map((each) => (
        <Finger key={each.finger} finger={each.finger} x={x(each.mm)} y={tip(each)} sounding={each.sounding} />
      ))}
      {open ? <circle className="openring" cx={-0.8} cy={y(string, 0)} r={0.5} /> : null}
      <text className="posname" x={x(frame.low)} y={bottom + 0.9}>
        {position}
      </text>
      {reach ? <path className="outside" d={`M${at(x(reach.from), bottom + 0.2)}h${at(x(reach.to) - x(reach.from))}m0 -0.5v1M${at(x(reach.from), bottom - 0.3)}v1`} /> : null}
      <path className="rule" d={`M0 ${at(rule)}H${LONG}${ticks.map((mm) => `M${at(x(mm), rule)}v0.5`).join('')}`} />
      {ticks.map((mm, i) => (
        <text key={mm} className="mm" x={x(mm)} y={rule + 1.9} textAnchor="middle">
          {i === ticks.length - 1 ? `${mm} ${words.board.unit}` : mm}
        </text>
      ))}
    </svg>
  );
}
