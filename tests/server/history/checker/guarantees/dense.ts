import type { Guarantee } from '../told.ts';

export const dense: Guarantee = {
  id: 3,
  says: 'the log of each part counts 1, 2, 3 ... to its head',
  broken: ({ of, logs }) => [
    ...[...logs].flatMap(([part, rows]) => {
      const at = rows.findIndex((row, index) => row.seq !== index + 1);
      return at < 0 ? [] : [{ what: `row ${at + 1} of part ${part} is numbered ${rows[at]!.seq}`, shown: rows.slice(Math.max(0, at - 1), at + 2) }];
    }),
    ...of('shown').filter(({ part, head }) => head !== (logs.get(part)?.length ?? 0)).map(({ part, head }) => ({ what: `the head of part ${part} is ${head}, and its log has ${logs.get(part)?.length ?? 0} rows`, shown: [] })),
  ],
};
