import { short } from '../../record/record.ts';
import type { Guarantee } from '../told.ts';

export const inOrder: Guarantee = {
  id: 5,
  says: 'every page takes every row once, in order, without a gap',
  broken({ of, logs }) {
    const reached = new Map(of('opened').map(({ page, part, seq }) => [`${page} ${part}`, seq]));
    return of('rows').flatMap((one) => {
      const key = `${one.page} ${one.part}`;
      const before = reached.get(key);
      reached.set(key, one.from + one.ops.length - 1);
      if (before === undefined || one.from !== before + 1) return [{ what: `a page had rows to ${before} and then took ${one.from}`, shown: [one] }];
      const rows = logs.get(one.part) ?? [];
      const odd = one.ops.findIndex((op, index) => op !== short(rows[one.from - 1 + index]?.operation ?? ''));
      return odd < 0 ? [] : [{ what: `row ${one.from + odd} was delivered as another than the log has`, shown: [one, rows[one.from - 1 + odd] ?? null] }];
    });
  },
};
