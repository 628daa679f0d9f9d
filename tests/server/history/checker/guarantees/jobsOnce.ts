import type { Guarantee } from '../told.ts';

export const jobsOnce: Guarantee = {
  id: 13,
  says: 'a long job that was taken in has its effect once, whatever is killed',
  broken: ({ of }) => of('job').filter(({ effects, told }) => effects !== (told === 'done' ? 1 : 0)).map((one) => ({ what: `a job that is ${one.told} had its effect ${one.effects} times`, shown: [one] })),
};
