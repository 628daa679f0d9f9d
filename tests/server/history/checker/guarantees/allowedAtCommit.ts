import type { Guarantee } from '../told.ts';

export const allowedAtCommit: Guarantee = {
  id: 8,
  says: 'nobody writes a row while they have no seat or are signed out, and who is signed out loses the line',
  broken: ({ of, logs }) => [
    ...of('shutOut').flatMap((one) =>
      (logs.get(one.part) ?? [])
        .slice(one.from - 1, one.to)
        .filter(({ by }) => by === one.person)
        .map((row) => ({ what: `a row of somebody ${one.why === 'unseated' ? 'without a seat' : 'signed out'}`, shown: [one, row] })),
    ),
    ...of('cutOff').filter(({ ms, most }) => ms > most).map((one) => ({ what: `somebody signed out kept the line for ${Math.round(one.ms)} ms`, shown: [one] })),
  ],
};
