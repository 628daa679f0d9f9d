import { comesTo } from '../comesTo.ts';
import type { Guarantee } from '../told.ts';

export const snapshots: Guarantee = {
  id: 6,
  says: 'a snapshot comes to the same as the rows up to it',
  broken: ({ of, logs }) =>
    of('snapshot').flatMap((one) => {
      const rows = (logs.get(one.part) ?? []).slice(0, one.seq);
      if (rows.length < one.seq) return [{ what: `a snapshot of row ${one.seq}, and the log has ${rows.length}`, shown: [one] }];
      return comesTo(rows) === one.state ? [] : [{ what: 'a snapshot differs from its rows', shown: [one] }];
    }),
};
