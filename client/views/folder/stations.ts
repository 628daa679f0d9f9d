import { firstDay } from '../../../core/season/days.ts';
import { deadlinesOf } from '../../../core/season/deadlines.ts';
import type { ProgrammeView } from '../../../core/agreement/wire/http.ts';
import { words } from '../../words/words.ts';

export interface Station {
  kind: 'day' | 'last' | 'deadline';
  at: number;
  /** ISO day or moment. */
  date: string;
  what: string;
}

/** Stations of a programme in time, first to last: when it was pulled, the first rehearsal and every concert by name, the other rehearsals without, and the deadlines between. */
export function stationsOf({ works, days, deadlines }: Pick<ProgrammeView, 'works' | 'days' | 'deadlines'>): Station[] {
  const pulled = works.map(({ importedAt }) => importedAt).sort()[0];
  const first = firstDay(days, 'rehearsal');
  const last = days.at(-1)?.date;
  const named = days.map(({ kind, date }): [Station['kind'], string, string] => [date === last ? 'last' : 'day', date, kind === 'concert' ? words.folder.concert : date === first ? words.folder.first : '']);
  const by = deadlinesOf(days, deadlines).map(({ stage, date }): [Station['kind'], string, string] => ['deadline', date, words.stages[stage]]);
  const all = [...(pulled ? [['day', pulled, words.folder.pulled] as [Station['kind'], string, string]] : []), ...named, ...by];
  return all.map(([kind, date, what]) => ({ kind, date, what, at: Date.parse(date) })).sort((a, b) => a.at - b.at);
}

/** A row for each label, so that none lies over another: the first in which there is room, from left to right. Labels hang from their left end `x`. */
export function rowsOf(labels: readonly { x: number; width: number }[]): number[] {
  const ends: number[] = [];
  return labels.map(({ x, width }) => {
    const free = ends.findIndex((end) => end <= x);
    const row = free < 0 ? ends.length : free;
    ends[row] = x + width;
    return row;
  });
}
