import { useMemo, type ReactNode } from 'react';
import type { InkChange } from '../../../core/agreement/difference.ts';
import type { MarkInForce } from '../../../core/agreement/inForce.ts';
import { markWords, seatWords } from '../../../core/music/markWords.ts';
import { Marks } from '../../drawing/Marks.tsx';
import { placeMarks, type PlacedMarks } from '../../drawing/placeMarks.ts';
import type { EngravedSystem, Geometry } from '../../engraving/geometry.ts';
import type { PartIndex } from '../../library/partIndex.ts';
import { words } from '../../words/words.ts';
import { inked } from '../stand/shownMarks.ts';
import type { Snippet } from './snippets.ts';

const say = (value: NonNullable<InkChange['after']>): string => markWords(value, undefined, words.marks);

/** One change in a sentence. */
function changeSentence({ kind, before, after, seats }: InkChange): string {
  const whose = seatWords(seats, words.marks);
  if (kind === 'changed') return words.revisions.changed(say(before!), say(after!), whose);
  return kind === 'added' ? words.revisions.added(say(after!), whose) : words.revisions.rubbedOut(say(before!), whose);
}

function inside(geometry: Geometry, { from, to }: Snippet): { geometry: Geometry; x0: number; x1: number } {
  const covered = geometry.measures.filter(({ ordinal }) => from <= ordinal && ordinal <= to);
  const [x0, x1] = [Math.min(geometry.width, ...covered.map((measure) => measure.x0)), Math.max(0, ...covered.map((measure) => measure.x1))];
  const notes = Object.fromEntries(Object.entries(geometry.notes).filter(([, { x }]) => x >= x0 && x <= x1));
  return { geometry: { ...geometry, notes, near: geometry.near.filter((box) => box.x1 > x0 && box.x0 < x1) }, x0, x1 };
}

/** The measures as engraved, with one state of the marks on them. */
function Staff({ id, label, systemId, reach, placed, top, bottom }: { id: string; label: string; systemId: string; reach: { x0: number; x1: number }; placed: PlacedMarks; top: number; bottom: number }): ReactNode {
  const { x0, x1 } = reach;
  const width = x1 - x0;
  return (
    <svg className="music snippet" role="img" aria-label={label} viewBox={`${x0} ${top} ${width} ${bottom - top}`} style={{ width: `calc(${width} * var(--sp))`, maxWidth: '100%' }}>
      <clipPath id={id}>
        <rect x={x0} y={top} width={width} height={bottom - top} />
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
  const near = here.geometry.near;
  const top = Math.min(...placed.map((one) => one.top), here.geometry.top - 3, ...near.map(({ y0 }) => y0)) - 1;
  const bottom = Math.max(...placed.map((one) => one.bottom), here.geometry.bottom + 2, ...near.map(({ y1 }) => y1)) + 0.8;
  const title = words.measures(number(snippet.from), number(snippet.to));
  return (
    <section className="pair" aria-label={title} data-pair={snippet.from}>
      <h3>{title}</h3>
      <div className="staves">
        {([words.revisions.before, words.revisions.after] as const).map((word, i) => (
          <figure key={word}>
            <Staff id={`pair-${snippet.from}-${i}`} label={words.revisions.choose(word, title)} systemId={systemId} reach={here} placed={placed[i]!} top={top} bottom={bottom} />
            <figcaption>{word}</figcaption>
          </figure>
        ))}
      </div>
      <ul>
        {snippet.changes.map((change) => (
          <li key={`${change.note} ${changeSentence(change)}`}>{changeSentence(change)}</li>
        ))}
      </ul>
    </section>
  );
}
