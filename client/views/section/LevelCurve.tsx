import { useMemo, type ReactNode } from 'react';
import { THRESHOLDS } from '../../../core/bowing/dip.ts';
import { levelThrough } from '../../../core/bowing/stagger/level.ts';
import type { SectionPassage } from '../../../core/bowing/sectionBows.ts';
import { words } from '../../words/words.ts';
import { isIn, type Span } from './Lane.tsx';
import { changesOf } from './lanes.ts';

/** Height of the picture in staff spaces, and the least depth it shows: a single dip then fills little of it. */
const HEIGHT = 4.4;
const LEAST_DEPTH = 0.6;

/** The section's predicted level under the changes: full at the upper line, each change a dip. */
export function LevelCurve({ passage, x, span, y, label }: { passage: SectionPassage; x: (second: number) => number; span: Span; y: number; label: number }): ReactNode {
  const { start, end, seats } = passage;
  const { worst, curve } = useMemo(() => levelThrough(changesOf(passage).map(({ second }) => second - start), seats.length, end - start), [passage, start, end, seats.length]);
  const depth = Math.max(LEAST_DEPTH, worst * 1.05);
  const down = (dip: number) => ((dip / depth) * HEIGHT).toFixed(2);
  const here = [...curve.filter(({ time }) => isIn(start + time, span)), { time: span.end - start, dip: 0 }];
  const points = [{ time: span.start - start, dip: here[0]!.dip }, ...here].map(({ time, dip }) => `${x(start + time).toFixed(2)} ${down(dip)}`);
  const marks = [THRESHOLDS.strict, THRESHOLDS.ordinary].filter((dip) => dip < depth);
  return (
    <g className="level" transform={`translate(0 ${y})`}>
      <path className="pointline" d={`M${x(span.start)} 0H${x(span.end)}`} />
      {marks.map((dip) => (
        <g key={dip}>
          <path className="limit" d={`M${x(span.start)} ${down(dip)}H${x(span.end)}`} />
          <text className="lab" x={x(span.end) - 0.3} y={Number(down(dip)) - 0.4} textAnchor="end">
            {words.section.decibels(dip)}
          </text>
        </g>
      ))}
      <path className="sounds" d={`M${points.join('L')}`} />
      <text className="lab" x={label} y="1.4" textAnchor="end">
        {words.section.level}
      </text>
    </g>
  );
}

/** Staff spaces it takes. */
export const LEVEL_HEIGHT = HEIGHT + 1.4;
