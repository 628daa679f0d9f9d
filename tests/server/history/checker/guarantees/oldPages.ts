import type { Guarantee } from '../told.ts';

export const oldPages: Guarantee = {
  id: 10,
  says: 'a page of another age is told so, keeps its line and writes nothing',
  broken: ({ of, rowOf }) =>
    of('oldPage').flatMap((one) => [
      ...(one.status === 'oldProgram' ? [] : [{ what: `an old page was not told: ${one.status}`, shown: [one] }]),
      ...(one.waiting.includes(one.op) ? [] : [{ what: 'an old page lost its line', shown: [one] }]),
      ...(rowOf.has(one.op) ? [{ what: 'an old page wrote a row', shown: [one, rowOf.get(one.op)] }] : []),
    ]),
};
