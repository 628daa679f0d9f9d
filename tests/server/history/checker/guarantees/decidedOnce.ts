import type { Guarantee, Told } from '../told.ts';

export const decidedOnce: Guarantee = {
  id: 11,
  says: 'a proposal is decided once and nothing is said about it afterwards; what was acknowledged before another was written stands before it',
  broken: (told) => [...decisions(told), ...realTime(told)],
};

function decisions({ logs }: Told) {
  return [...logs].flatMap(([part, rows]) => {
    const ended = new Map<string, unknown>();
    const open = new Set<string>();
    return rows.flatMap((row) =>
      row.events.flatMap((event) => {
        if (event.type === 'proposed') open.add(event.id);
        const about = event.type === 'adopted' || event.type === 'setAside' || event.type === 'voteCast' ? event.proposal : event.type === 'withdrawn' || event.type === 'revised' ? event.id : null;
        if (about === null) return [];
        const before = ended.get(about);
        if (event.type === 'adopted' || event.type === 'setAside' || event.type === 'withdrawn') ended.set(about, row);
        if (before) return [{ what: `${event.type} after the proposal was decided`, shown: [{ part }, before, row] }];
        return open.has(about) ? [] : [{ what: `${event.type} about a proposal that is not there`, shown: [{ part }, row] }];
      }),
    );
  });
}

/** Real time: each row written after the acknowledgement of another comes after it. Both times are of one steady clock. */
function realTime({ of, rowOf }: Told) {
  const acknowledged = byPart(of('acknowledged'));
  const written = byPart(of('written').flatMap(({ op, t }) => (rowOf.has(op) ? [{ op, t, ...rowOf.get(op)! }] : [])));
  return [...written].flatMap(([part, rows]) => {
    const answers = (acknowledged.get(part) ?? []).sort((a, b) => a.t - b.t);
    let next = 0;
    let highest: Placed | null = null;
    return rows.sort((a, b) => a.t - b.t).flatMap((row) => {
      for (; next < answers.length && answers[next]!.t < row.t; next++) if (!highest || answers[next]!.seq > highest.seq) highest = answers[next]!;
      return highest && highest.seq >= row.seq ? [{ what: `row ${row.seq} was written after row ${highest.seq} was acknowledged`, shown: [{ part }, highest, row] }] : [];
    });
  });
}

interface Placed {
  op: string;
  t: number;
  part: string;
  seq: number;
}

function byPart(list: readonly Placed[]): Map<string, Placed[]> {
  const parts = new Map<string, Placed[]>();
  for (const one of list) {
    const there = parts.get(one.part);
    if (there) there.push(one);
    else parts.set(one.part, [one]);
  }
  return parts;
}
