import type { ReactNode } from 'react';
import type { Measures } from '../../../core/matching/editions/carryMarks.ts';
import type { ShownMark } from '../../../core/engraving/marks/placeMarks.ts';
import type { EngravingSnapshot } from '../../engraving/engraving.ts';
import type { SystemRange } from '../../../core/engraving/systemRanges.ts';
import { words } from '../../words/words.ts';
import { EmptyStaff } from '../stand/EmptyStaff.tsx';
import { PaperSystem } from '../stand/paper/PaperSystem.tsx';
import { linesOfPlace } from './placeLines.ts';

interface Props {
  title: string;
  range: Measures | null;
  lines: readonly SystemRange[];
  engraved: EngravingSnapshot;
  width: number;
  /** Printed number of a measure. */
  name(ordinal: number): string;
  marks: readonly ShownMark[];
  note: string | null;
  onPoint?: (note: string) => void;
}

/** One edition at a changed place. */
export function EditionLines({ title, range, lines, engraved, width, name, marks, note, onPoint }: Props): ReactNode {
  const shown = linesOfPlace(lines, range);
  return (
    <div className="edition" role="group" aria-label={title}>
      <h3>{title}</h3>
      {range ? null : <p>{words.changed.notThere}</p>}
      {shown.map((at) => {
        const { first, last } = lines[at]!;
        const drawing = engraved.systems[at]?.drawing;
        const label = `${title}, ${words.inMeasures(name(first), name(last))}`;
        return drawing ? <PaperSystem key={first} drawing={drawing} number={name(first)} label={label} before={4} marks={marks} inHand={note} onPoint={onPoint} /> : <EmptyStaff key={first} width={width} />;
      })}
    </div>
  );
}
