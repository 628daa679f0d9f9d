import type { Guarantee } from '../told.ts';

export const once: Guarantee = {
  id: 2,
  says: 'an id sent any number of times has one row and the same answer',
  broken({ of, logs, ensembleOf }) {
    const first = new Map<string, unknown>();
    const twice = [...logs].flatMap(([part, rows]) =>
      rows.flatMap((row) => {
        const key = `${ensembleOf.part.get(part)} ${row.operation}`;
        const before = first.get(key);
        first.set(key, { part, row });
        return before ? [{ what: 'one id has two rows', shown: [before, { part, row }] }] : [];
      }),
    );
    const otherwise = of('resent').filter(({ first: answer, again }) => answer !== again).map((one) => ({ what: 'an id sent again was answered otherwise', shown: [one] }));
    const answers = new Map<string, { text: string; one: unknown }>();
    const changed = [...of('acknowledged'), ...of('refused')].flatMap((one) => {
      const text = one.k === 'acknowledged' ? `at ${one.seq}` : `refused ${one.code}`;
      const before = answers.get(one.op);
      answers.set(one.op, { text, one });
      return before && before.text !== text ? [{ what: `answered ${before.text}, then ${text}`, shown: [before.one, one] }] : [];
    });
    const remembered = new Map(of('turnedDown').flatMap(({ ops }) => ops.map(({ op, code }) => [op, code] as const)));
    const forgotten = of('refused').filter(({ sent, op, code }) => sent && remembered.get(op) !== code).map((one) => ({ what: `refused ${one.code}, and the library remembers ${remembered.get(one.op) ?? 'nothing of it'}`, shown: [one] }));
    return [...twice, ...otherwise, ...changed, ...forgotten];
  },
};
