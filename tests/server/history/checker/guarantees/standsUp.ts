import type { Guarantee } from '../told.ts';

export const standsUp: Guarantee = {
  id: 14,
  says: 'no server ends by itself, whatever is away',
  broken: ({ of }) => of('fell').map((one) => ({ what: `${one.name} ended by itself`, shown: one.said.slice(-12) })),
};
