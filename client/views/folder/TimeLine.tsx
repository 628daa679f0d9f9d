import type { ReactNode } from 'react';
import type { ProgrammeView } from '../../../core/agreement/wire/http.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { words } from '../../words/words.ts';
import { rowsOf, stationsOf, type Station } from './stations.ts';

const DAY_MS = 86_400_000;
const ROW = 19;
/** Width of a letter of the two faces in pixels, rather too much than too little. Chosen, not measured. */
const LETTER = { above: 9, below: 7.4 };
const GAP = 14;

interface Label {
  x: number;
  width: number;
  text: string;
  now: boolean;
}

/** Labels in rows, each under or over its station and kept on the page. */
function laid(labels: { x: number; text: string; now?: boolean }[], letter: number, wide: number): (Label & { row: number })[] {
  const placed = labels.map(({ x, text, now = false }): Label => {
    const width = text.length * letter + GAP;
    return { x: Math.max(0, Math.min(x, wide - width + GAP)), width, text, now };
  });
  placed.sort((a, b) => a.x - b.x);
  const rows = rowsOf(placed);
  return placed.map((label, i) => ({ ...label, row: rows[i]! }));
}

function sentence(stations: readonly Station[], today: string): string {
  const said = stations.filter(({ what }) => what).map(({ kind, what, date }) => (kind === 'deadline' ? words.season.by(what, words.day(date)) : `${what} ${words.day(date)}`));
  return `${words.folder.time}. ${said.join(', ')}; ${words.folder.today(today)}`;
}

/** A programme's days on one string, with today in rosin; each deadline is a barline through it. Days stand above, deadlines and today below. */
export function TimeLine({ programme, now = Date.now() }: { programme: ProgrammeView; now?: number }): ReactNode {
  const size = useWindowSize();
  const { music, sp } = sizesFor(size.width, size.height);
  const wide = music * sp;
  const stations = stationsOf(programme);
  const last = Math.max(stations.at(-1)?.at ?? now, now);
  const first = Math.min(stations[0]?.at ?? now, now);
  if (stations.length < 2 || last - first < DAY_MS) return null;
  const x = (at: number) => Math.round(((at - first) / (last - first)) * (wide - 12) + 6);
  const today = words.day(new Date(now).toISOString());
  const above = laid(stations.filter(({ kind, what }) => kind !== 'deadline' && what).map(({ at, what, date }) => ({ x: x(at), text: `${what}, ${words.day(date)}` })), LETTER.above, wide);
  const below = laid([{ x: x(now), text: words.folder.today(today), now: true }, ...stations.filter(({ kind }) => kind === 'deadline').map(({ at, what, date }) => ({ x: x(at), text: words.season.by(what, words.day(date)) }))], LETTER.below, wide);
  const line = (Math.max(...above.map(({ row }) => row), 0) + 1) * ROW + 20;
  const height = line + 24 + (Math.max(...below.map(({ row }) => row)) + 1) * ROW;
  return (
    <svg className="time" role="img" aria-label={sentence(stations, today)} viewBox={`0 0 ${wide} ${height}`}>
      <path className="rest" d={`M6 ${line}H${x(last)}`} />
      <path className="past" d={`M6 ${line}H${x(now)}`} />
      {stations.map(({ kind, at, date, what }) => {
        const bar = `M${x(at)} ${line - 10}V${line + 10}`;
        if (kind === 'day') return <path key={`${date} ${what}`} className="rest" d={`M${x(at)} ${line - (what ? 9 : 5)}V${line}`} />;
        return (
          <g key={`${kind} ${date} ${what}`}>
            <path className="by" d={bar} transform={kind === 'last' ? 'translate(-5 0)' : undefined} />
            {kind === 'last' ? <path className="past" d={bar} /> : null}
          </g>
        );
      })}
      <rect className="today" x={x(now) - 4} y={line - 15} width="8" height="30" />
      {above.map(({ x: at, row, text }) => (
        <text key={text} className="what" x={at} y={line - 20 - row * ROW}>
          {text}
        </text>
      ))}
      {below.map(({ x: at, row, text, now: isNow }) => (
        <text key={text} className={isNow ? 'now' : 'when'} x={at} y={line + 31 + row * ROW}>
          {text}
        </text>
      ))}
    </svg>
  );
}
