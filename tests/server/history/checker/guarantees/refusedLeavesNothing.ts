import type { Guarantee } from '../told.ts';

export const refusedLeavesNothing: Guarantee = {
  id: 7,
  says: 'what was refused has no row, and shows on no page',
  broken({ of, rowOf }) {
    const rows = [...of('refused').map((one) => ({ op: one.op, one: one as unknown })), ...of('turnedDown').flatMap((one) => one.ops.map(({ op }) => ({ op, one: { part: one.part, op } as unknown })))]
      .filter(({ op }) => rowOf.has(op))
      .map(({ op, one }) => ({ what: 'refused and in the log', shown: [one, rowOf.get(op)] }));
    const pages = of('final').filter(({ settled, waiting, status }) => status === 'live' && waiting.length === 0 && !settled).map((one) => ({ what: 'a page that waits for nothing shows more than is confirmed', shown: [one] }));
    return [...rows, ...pages];
  },
};
