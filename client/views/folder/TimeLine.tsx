import type { ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { sizesFor } from '../../engraving/sizes.ts';
import { useWindowSize } from '../../ui/useWindowSize.ts';
import { words } from '../../words/words.ts';

const DAY_MS = 86_400_000;

interface Station {
  at: number;
  date: string;
  what: string;
}

/** Stations of a programme in time, first to last. */
export function stationsOf({ works, firstRehearsal, concert }: Shelf['programmes'][number]): Station[] {
  const pulled = works.map(({ importedAt }) => importedAt).sort()[0];
  const known: [string | null | undefined, string][] = [[pulled, words.folder.pulled], [firstRehearsal, words.folder.first], [concert, words.folder.concert]];
  return known.flatMap(([date, what]) => (date ? [{ at: Date.parse(date), date, what }] : [])).sort((a, b) => a.at - b.at);
}

/** The days to the first rehearsal and the concert on one string, with today in rosin. */
export function TimeLine({ programme, now = Date.now() }: { programme: Shelf['programmes'][number]; now?: number }): ReactNode {
  const size = useWindowSize();
  const { music, sp } = sizesFor(size.width, size.height);
  const wide = music * sp;
  const stations = stationsOf(programme);
  const last = stations.at(-1)?.at ?? now;
  const first = Math.min(stations[0]?.at ?? now, now);
  if (stations.length < 2 || last - first < DAY_MS) return null;
  const x = (at: number) => Math.round(((Math.min(at, last) - first) / (last - first)) * (wide - 12) + 6);
  // What stands close before the next gives way to the left.
  const crowded = (at: number) => stations.some((next) => x(next.at) > x(at) && x(next.at) - x(at) < 150);
  const anchor = (at: number) => (x(at) < 60 ? 'start' : x(at) > wide - 60 || crowded(at) ? 'end' : 'middle');
  const near = stations.some(({ at }) => Math.abs(x(at) - x(now)) < 120);
  return (
    <svg className="time" role="img" aria-label={`${words.folder.time}. ${stations.map(({ date, what }) => `${what} ${words.day(date)}`).join(', ')}; ${words.folder.today(words.day(new Date(now).toISOString()))}`} viewBox={`0 0 ${wide} 80`}>
      <path className="rest" d={`M6 40H${x(last)}`} />
      <path className="past" d={`M6 40H${x(now)}`} />
      {stations.map(({ at, date, what }) => (
        <g key={what}>
          <path className="rest" d={`M${x(at)} 31V49`} />
          <text className="what" x={x(at)} y="20" textAnchor={anchor(at)}>
            {what}
          </text>
          <text className="when" x={x(at)} y="72" textAnchor={anchor(at)}>
            {near && Math.abs(x(at) - x(now)) < 120 ? '' : words.day(date)}
          </text>
        </g>
      ))}
      <rect className="today" x={x(now) - 4} y="24" width="8" height="32" />
      <text className="now" x={x(now)} y="72" textAnchor={anchor(now)}>
        {words.folder.today(words.day(new Date(now).toISOString()))}
      </text>
    </svg>
  );
}
