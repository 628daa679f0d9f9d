import type { Part } from '../../music/part.ts';
import { quarters } from '../../music/time.ts';
import type { Apart } from './editionsApart.ts';
import type { Moment } from './musicRow.ts';

/** Each rest by how long after which moment it begins, how long it is, and which of several such; moments are named by `name`. */
function restsOf(part: Part, row: readonly Moment[], name: (at: number) => number | undefined): Map<string, string> {
  const rests = part.measures.flatMap((measure) => measure.notes.filter(({ rest }) => rest).map((note) => ({ note, at: Math.round((quarters(measure.start) + quarters(note.onset)) * 1e6) })));
  const found = new Map<string, string>();
  let moment = -1;
  for (const { note, at } of rests.sort((a, b) => a.at - b.at)) {
    while (moment + 1 < row.length && row[moment + 1]!.at <= at) moment += 1;
    const named = moment < 0 ? -1 : name(moment);
    if (named === undefined) continue;
    const place = `${named} ${at - (row[moment]?.at ?? 0)} ${note.duration}`;
    let key = place;
    for (let rank = 1; found.has(key); rank += 1) key = `${place} ${rank}`;
    found.set(key, note.id);
  }
  return found;
}

/** Rests of the newer edition with the id of the same rest in the older one. Rests carry no marks, so a voice that changed its name is nothing to them. */
export function sameRests({ before, after, partner, certain, isSame }: Apart, older: Part, newer: Part): [now: string, before: string][] {
  const ours = restsOf(older, before, (at) => (certain[at] && isSame(at) ? partner[at] : undefined));
  return [...restsOf(newer, after, (at) => at)].flatMap(([key, id]): [string, string][] => (ours.has(key) ? [[id, ours.get(key)!]] : []));
}
