import { memo, type MouseEvent, type ReactNode } from 'react';
import type { Geometry } from '../../../core/engraving/geometry.ts';
import { point } from './pointed.ts';
import { usePassageDrag } from './usePassageDrag.ts';

interface Props {
  geometry: Geometry;
  selected: readonly string[];
  label: (note: string) => string;
  onNote(note: string, extend: boolean): void;
  onMeasure(measure: number): void;
  top: number;
  height: number;
}

/** Where a note can be touched: from half way to the one before to half way to the next, the whole height of the system. Chord members share by height. */
export const HitAreas = memo(function HitAreas({ geometry, selected, label, onNote, onMeasure, top, height }: Props): ReactNode {
  const drag = usePassageDrag(onNote);
  const notes = Object.entries(geometry.notes).sort(([, a], [, b]) => a.x - b.x || a.y - b.y);
  // A finger has no Enter: the note in hand touched again opens its measure.
  const again = ({ nativeEvent }: MouseEvent, id: string) => nativeEvent instanceof PointerEvent && nativeEvent.pointerType === 'touch' && selected.length === 1 && selected[0] === id;
  const columns = [...new Set(notes.map(([, { x }]) => x))];
  return (
    <g className="hits" onPointerLeave={() => point(null)} {...drag}>
      {notes.map(([id, { x, y, measure }]) => {
        const column = columns.indexOf(x);
        const bar = geometry.measures.find(({ ordinal }) => ordinal === measure)!;
        const x0 = Math.max(bar.x0, column > 0 ? (columns[column - 1]! + x) / 2 : 0, x - 6);
        const x1 = Math.min(bar.x1, column < columns.length - 1 ? (columns[column + 1]! + x) / 2 : geometry.width, x + 6);
        const stacked = notes.filter(([, other]) => other.x === x);
        const [y0, y1] = stacked.length > 1 ? chordSlice(stacked.map(([, other]) => other.y), y, top, height) : [top, top + height];
        return (
          <rect
            key={id} x={x0} width={Math.max(0.8, x1 - x0)} y={y0} height={y1 - y0} data-note={id} data-measure={measure} role="button" tabIndex={-1}
            aria-label={label(id)} aria-pressed={selected.includes(id)} onClick={(event) => (again(event, id) ? onMeasure(measure) : onNote(id, event.shiftKey))} onMouseDown={(event) => event.preventDefault()}
            onPointerEnter={() => point(id)} onFocus={() => point(id)} onBlur={() => point(null)}
          />
        );
      })}
    </g>
  );
});

function chordSlice(heights: number[], y: number, top: number, height: number): [number, number] {
  const sorted = [...heights].sort((a, b) => a - b);
  const i = sorted.indexOf(y);
  return [i === 0 ? top : (sorted[i - 1]! + y) / 2, i === sorted.length - 1 ? top + height : (sorted[i + 1]! + y) / 2];
}
