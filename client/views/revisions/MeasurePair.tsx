import { useMemo, type CSSProperties, type ReactNode } from 'react';
import type { InkChange } from '../../../core/agreement/difference.ts';
import type { MarkInForce } from '../../../core/agreement/inForce.ts';
import { markWords, seatWords } from '../../../core/music/markWords.ts';
import { Marks } from '../../drawing/Marks.tsx';
import { placeMarks, type PlacedMarks } from '../../../core/engraving/marks/placeMarks.ts';
import { UNITS, type EngravedSystem, type Geometry } from '../../../core/engraving/geometry.ts';
import type { PartIndex } from '../../library/partIndex.ts';
import { words } from '../../words/words.ts';
import { extentOf } from '../../../core/engraving/marks/extent.ts';
import { inked } from '../stand/shownMarks.ts';
import type { Snippet } from './snippets.ts';

type Extent = ReturnType<typeof extentOf>;

const say = (value: NonNullable<InkChange['after']>): string => markWords(value, undefined, words.marks);

/** One change in a sentence; for whom only where it is not for all. */
function changeSentence({ kind, before, after, seats }: InkChange): string {
  const whose = seats === 'all' ? null : seatWords(seats, words.marks);
  if (kind === 'changed') return words.revisions.changed(say(before!), say(after!), whose);
  return kind === 'added' ? words.revisions.added(say(after!), whose) : words.revisions.rubbedOut(say(before!), whose);
}

/** Room before the first barline for what stands over it, staff spaces: a rehearsal letter, say. */
const BEFORE = 1.8;
/** How far the frame of a letter reaches past its box, staff spaces. */
const STROKE = 0.2;

/** From where to where a line is shown, and where that ends over the staff. */
interface Reach {
  x0: number;
  x1: number;
  cut: number;
}

function inside(geometry: Geometry, { from, to }: Snippet): Reach & { geometry: Geometry } {
  const covered = geometry.measures.filter(({ ordinal }) => from <= ordinal && ordinal <= to);
  const [first, x1] = [Math.min(geometry.width, ...covered.map((measure) => measure.x0)), Math.max(0, ...covered.map((measure) => measure.x1))];
  const notes = Object.fromEntries(Object.entries(geometry.notes).filter(([, { x }]) => x >= first && x <= x1));
  const x0 = Math.max(0, first - BEFORE);
  const here = (boxes: Geometry['near']) => boxes.filter((box) => box.x1 > x0 && box.x0 < x1);
  // What is over the last barline and reaches past it, a rehearsal letter say, is the next measure's.
  const high = here(geometry.high);
  const next = high.filter((box) => x1 - box.x0 < BEFORE && box.x1 > x1);
  return { geometry: { ...geometry, notes, near: here(geometry.near), high: high.filter((box) => !next.includes(box)), low: here(geometry.low) }, x0, x1, cut: Math.min(x1, ...next.map((box) => box.x0 - STROKE)) };
}

/** The measures as engraved, with one state of the marks on them. */
function Staff({ id, label, systemId, reach, placed, extent, geometry }: { id: string; label: string; systemId: string; reach: Reach; placed: PlacedMarks; extent: Extent; geometry: Geometry }): ReactNode {
  const { x0, x1, cut } = reach;
  const [top, bottom] = [geometry.top - extent.up, geometry.bottom + extent.down];
  const width = x1 - x0;
  const space = { '--lift': `${(-extent.lift * UNITS).toFixed(0)}px`, '--drop': `${(extent.drop * UNITS).toFixed(0)}px`, width: `calc(${width} * var(--sp))`, maxWidth: '100%' };
  return (
    <svg className="music snippet" role="img" aria-label={label} viewBox={`${x0} ${top} ${width} ${bottom - top}`} style={space as CSSProperties}>
      <clipPath id={id}>
        <path d={`M${x0} ${top}H${cut}V${geometry.top - 1}H${x1}V${bottom}H${x0}Z`} />
      </clipPath>
      <g clipPath={`url(#${id})`}>
        <use href={`#${systemId}`} />
      </g>
      <Marks placed={placed} />
    </svg>
  );
}

interface Props {
  snippet: Snippet;
  systemId: string;
  drawing: EngravedSystem;
  index: PartIndex;
  before: readonly MarkInForce[];
  after: readonly MarkInForce[];
  number(ordinal: number): string;
}

/** A stretch in which something differs: before, after, and each change in a sentence. */
export function MeasurePair({ snippet, systemId, drawing, index, before, after, number }: Props): ReactNode {
  const here = useMemo(() => inside(drawing.geometry, snippet), [drawing, snippet]);
  const placed = useMemo(() => [before, after].map((marks) => placeMarks(here.geometry, inked(marks, 'all', index).filter(({ note }) => note in here.geometry.notes))), [here, before, after, index]);
  const extents = placed.map((one) => extentOf(here.geometry, one, false));
  // Both as high, so that their lines stand side by side.
  const [up, down] = [Math.max(...extents.map((one) => one.up)), Math.max(...extents.map((one) => one.down))];
  const byMeasure = [...new Set(snippet.changes.map(({ measure }) => measure))];
  const title = words.measures(number(snippet.from), number(snippet.to));
  return (
    <section className="pair" aria-label={title} data-pair={snippet.from}>
      <h3>{title}</h3>
      <div className="staves">
        {([words.revisions.before, words.revisions.after] as const).map((word, i) => (
          <figure key={word}>
            <Staff id={`pair-${snippet.from}-${i}`} label={words.revisions.choose(word, title)} systemId={systemId} reach={here} placed={placed[i]!} extent={{ ...extents[i]!, up, down }} geometry={here.geometry} />
            <figcaption>{word}</figcaption>
          </figure>
        ))}
      </div>
      <ul>
        {byMeasure.map((measure) => (
          <li key={measure}>
            <b>{number(measure)}</b> {[...new Set(snippet.changes.filter((change) => change.measure === measure).map(changeSentence))].join(' · ')}
          </li>
        ))}
      </ul>
    </section>
  );
}
