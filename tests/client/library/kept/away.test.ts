import { expect, it } from 'vitest';
import { reach } from '../../../../client/library/kept/away.ts';

it('a library that was lost is knocked at until it answers, and each return is counted once', async () => {
  const timers: (() => void)[] = [];
  let answers = false;
  let knocks = 0;
  const library = reach(
    () => {
      knocks += 1;
      return answers ? Promise.resolve() : Promise.reject(new Error('away'));
    },
    (_, run) => void timers.push(run),
  );
  const turn = async () => {
    timers.shift()!();
    await new Promise((resolve) => setTimeout(resolve, 0));
  };
  const seen: [boolean, number][] = [];
  library.subscribe(() => seen.push([library.away(), library.returns()]));
  library.lost();
  library.lost();
  expect(timers).toHaveLength(1);
  await turn();
  expect(library.away()).toBe(true);
  answers = true;
  await turn();
  expect(knocks).toBe(2);
  expect(timers).toEqual([]);
  expect(seen).toEqual([[true, 0], [false, 1]]);
});
