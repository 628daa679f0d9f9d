import type { Guarantee } from '../told.ts';

export const nothingForgotten: Guarantee = {
  id: 9,
  says: 'what was written survives every reload under its id, and ends in the log or refused; nothing else is in the log',
  broken({ of, rowOf, logs }) {
    const written = new Set(of('written').map(({ op }) => op));
    const refused = new Set([...of('refused').map(({ op }) => op), ...of('turnedDown').flatMap(({ ops }) => ops.map(({ op }) => op))]);
    const answered = (op: string) => rowOf.has(op) || refused.has(op);
    const lost = of('kept').filter(({ op }) => !answered(op)).map((one) => ({ what: 'written and lost', shown: [one] }));
    const stuck = of('final').filter(({ waiting }) => waiting.length > 0).map((one) => ({ what: 'a page still waits at the end', shown: [one] }));
    const unknown = [...logs].flatMap(([part, rows]) => rows.filter(({ operation }) => !written.has(operation)).map((row) => ({ what: 'a row that nobody wrote', shown: [{ part, row }] })));
    return [...lost, ...stuck, ...unknown, ...reordered(of('left'), of('opened'))];
  },
};

interface Page {
  person: string;
  part: string;
  page: string;
  waiting: string[];
}

/** What waited before a reload and still waits after it stands in the same order; nothing is there that was not. */
function reordered(left: readonly Page[], opened: readonly Page[]) {
  const next = new Map<string, Page[]>();
  for (const one of opened) next.set(`${one.person} ${one.part}`, [...(next.get(`${one.person} ${one.part}`) ?? []), one]);
  return left.flatMap((before) => {
    const pages = next.get(`${before.person} ${before.part}`) ?? [];
    const after = pages[pages.findIndex(({ page }) => page === before.page) + 1];
    if (!after) return [];
    const kept = before.waiting.filter((op) => after.waiting.includes(op));
    const same = kept.join() === after.waiting.filter((op) => kept.includes(op)).join();
    return same ? [] : [{ what: 'a reload changed the order of what waits', shown: [before, after] }];
  });
}
