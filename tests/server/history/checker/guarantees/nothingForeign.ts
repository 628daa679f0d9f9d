import type { Guarantee } from '../told.ts';

export const nothingForeign: Guarantee = {
  id: 12,
  says: 'nobody sees or writes a row of another ensemble',
  broken({ of, logs, ensembleOf: { person, part } }) {
    const heard = of('heard').filter((one) => part.get(one.part) !== person.get(one.person) || person.get(one.by) !== person.get(one.person)).map((one) => ({ what: 'somebody was sent a row of another ensemble', shown: [one] }));
    const pried = of('pried').filter(({ got }) => got > 0).map((one) => ({ what: `asking for another ensemble's part by ${one.how} gave something`, shown: [one] }));
    const rows = [...logs].flatMap(([id, all]) =>
      all.filter((row) => row.ensemble !== part.get(id) || person.get(row.by) !== part.get(id)).map((row) => ({ what: 'a row stands in the log of another ensemble', shown: [{ part: id }, row] })),
    );
    return [...heard, ...pried, ...rows];
  },
};
