import type { Guarantee } from '../told.ts';

export const acknowledged: Guarantee = {
  id: 1,
  says: 'what was acknowledged is in the log, at the place that was said',
  broken: ({ of, logs, rowOf }) =>
    of('acknowledged').flatMap((one) => {
      const row = logs.get(one.part)?.[one.seq - 1];
      return row?.operation === one.op ? [] : [{ what: rowOf.has(one.op) ? `acknowledged at ${one.seq}, logged elsewhere` : 'acknowledged and not in the log', shown: [one, rowOf.get(one.op) ?? null, row ?? null] }];
    }),
};
