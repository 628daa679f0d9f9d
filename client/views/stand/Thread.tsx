import { memo, useMemo, type MouseEvent, type ReactNode } from 'react';
import type { Finding } from '../../../core/check/finding.ts';
import type { Part } from '../../../core/music/part.ts';
import { lensOf } from '../../drawing/lensOf.ts';
import type { Lens } from '../../../core/engraving/marks/placeMarks.ts';
import { spectaclesAt } from '../../drawing/spectaclesAt.ts';
import { TalkSign } from '../../drawing/TalkSign.tsx';
import { words } from '../../words/words.ts';
import type { Waiting } from '../../../core/agreement/waiting/waitsFor.ts';
import type { OpenRange } from './openMeasures.ts';
import { sameProps } from './sameProps.ts';

interface Props {
  part: Part;
  open: readonly OpenRange[];
  /** What waits for me. */
  waits: readonly Waiting[];
  findings: readonly Finding[];
  /** Measures with talk I have not read. */
  unread: readonly number[];
  /** First and last measure on view. */
  seen: readonly [number, number];
  here: number;
  away: boolean;
  done: boolean;
  /** Share of the part that is engraved. */
  grown: number;
  width: number;
  onMeasure(measure: number): void;
}

/** One finding a measure at most: the worst, which comes first. */
function oneEach(findings: readonly Finding[]): Finding[] {
  const seen = new Set<number>();
  return findings.filter(({ measure }) => !seen.has(measure) && seen.add(measure));
}

interface SignsProps extends Pick<Props, 'part' | 'open' | 'waits' | 'unread' | 'width'> {
  watch: readonly { measure: number; dark: Lens }[];
}

/** What lies along the string: letters, brackets, what waits, spectacles. None of it changes from key to key. */
const ThreadSigns = memo(function ThreadSigns({ part, open, waits, unread, watch, width }: SignsProps): ReactNode {
  const at = place(part, width);
  const specs = spectaclesAt(watch.map(({ measure, dark }) => ({ x: at(measure), dark })), 28.5, 5);
  return (
    <>
      {part.measures.map(({ ordinal, rehearsal }) =>
        rehearsal ? (
          <g key={ordinal}>
            <path className="tickm" d={`M${at(ordinal)} 28V34`} />
            <text x={Math.max(5, at(ordinal))} y="45" textAnchor="middle">
              {rehearsal}
            </text>
          </g>
        ) : null,
      )}
      {open.map(({ from, slips }) => (
        <g key={from} data-thread-open={from}>
          <path className="corner" transform={`translate(${at(from) + 1} 20)`} d="M-7 4V-4H-3.5M3.5-4H7V4" />
          <text className="number" x={at(from) + 1} y="12.5" textAnchor="middle">
            {slips.length}
          </text>
        </g>
      ))}
      {[...new Set(waits.map(({ measure }) => measure))].map((measure) => (
        <circle key={measure} className="mine" cx={at(measure) + 1} cy="28.5" r="4.5" data-waits={measure} />
      ))}
      {unread.map((measure) => (
        <TalkSign key={measure} x={at(measure) + 11} y={14} measure={measure} scale={6} />
      ))}
      <path className="watch-open" d={specs.open} />
      <path className="watch-dark" d={specs.dark} />
      <path className="watch-bridge" d={specs.bridges} />
    </>
  );
}, sameProps);

/** Where a measure lies on a string as long as `width`. */
const place = ({ measures }: Part, width: number) => (measure: number) => ((measure - 1) / Math.max(1, measures.length)) * width;

/** The whole part as one string: rosin for what is on view, brackets for open measures, spectacles, letters. A touch moves there. */
export const Thread = memo(function Thread({ part, open, waits, findings, unread, seen, here, away, done, grown, width, onMeasure }: Props): ReactNode {
  const bars = Math.max(1, part.measures.length);
  const at = place(part, width);
  const watch = useMemo(() => oneEach(findings).map(({ measure, seats }) => ({ measure, dark: lensOf(seats) })), [findings]);
  const onClick = (event: MouseEvent<SVGSVGElement>) => {
    const { left, width: wide } = event.currentTarget.getBoundingClientRect();
    onMeasure(Math.min(bars, Math.max(1, Math.floor(((event.clientX - left) / wide) * bars) + 1)));
  };
  return (
    <svg className="string" role="img" aria-label={[words.thread(bars, open.length, watch.length), waits.length ? words.waits.count(waits.length) : '', unread.length ? words.view.unread(unread.length) : ''].filter(Boolean).join('; ')} viewBox={`0 0 ${width} 46`} preserveAspectRatio="none" onClick={onClick}>
      <rect className="seen" x={at(seen[0])} y="25" width={Math.max(4, at(seen[1] + 1) - at(seen[0]))} height="7" />
      <path className="thread" d={`M0 28.5H${width * grown}`} strokeDasharray={away ? '7 6' : undefined} />
      <path d="M0 22V35" className="nut" />
      {done ? <path className="final" d={`M${width - 7} 18V39M${width - 1.5} 18V39`} /> : <path className="tickm end" d={`M${width - 1} 20V37`} />}
      <ThreadSigns part={part} open={open} waits={waits} unread={unread} watch={watch} width={width} />
      <path className="now" d={`M${at(here) + 1} 22V35`} />
    </svg>
  );
});
