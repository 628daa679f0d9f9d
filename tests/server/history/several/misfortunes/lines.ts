import { setTimeout as wait } from 'node:timers/promises';
import type { Proxy } from '../../proxy.ts';
import type { Misfortune, Scene } from './misfortune.ts';

/** Lines between people and servers, servers and database, servers and Redis: cut, mute, slow, shut. */
export function toLines({ premises, doors, luck, troubles }: Scene): Misfortune[] {
  const all = [...doors.values()];
  const some = (many: number): Proxy[] => Array.from({ length: many }, () => luck.pick(all));
  const toDatabase = () => luck.pick(premises.stations.map(({ database }) => database));
  const toRedis = () => {
    const lines = premises.stations.flatMap(({ redis }) => redis ?? []);
    return lines.length ? luck.pick(lines) : null;
  };
  const done = (at: string) => ({ at, over: Promise.resolve() });

  async function slow(lines: Proxy[], ms: number): Promise<void> {
    for (const line of lines) line.delay(20 + luck.below(ms));
    await wait(1500);
    for (const line of lines) line.delay(0);
  }
  async function mute(lines: Proxy[], ms: number): Promise<void> {
    for (const line of lines) line.swallow(ms);
    await wait(ms);
  }
  async function shut(lines: Proxy[], ms: number): Promise<void> {
    for (const line of lines) {
      line.refuse(true);
      line.cutAll();
    }
    await wait(ms);
    for (const line of lines) line.refuse(false);
  }
  const hit = (line: () => Proxy | null, at: string, work: (line: Proxy) => Promise<unknown> | void) => () => {
    const one = line();
    return one && { at, over: troubles.during(Promise.resolve(work(one))) };
  };

  return [
    { kind: 'line of a person cut', often: 3, strike: () => (some(1 + luck.below(6)).forEach((line) => line.cutAll()), done('people')) },
    { kind: 'all lines of people cut', often: 1, strike: () => (all.forEach((line) => line.cutAll()), done('everybody')) },
    { kind: 'line of a person half-open', often: 3, strike: () => ({ at: 'people', over: mute(some(4), 100 + luck.below(2000)) }) },
    { kind: 'lines of people slow', often: 1, strike: () => ({ at: 'everybody', over: slow(all, 250) }) },
    { kind: 'lines of people shut', often: 1, strike: () => ({ at: 'people', over: shut(some(8), 600 + luck.below(2000)) }) },
    { kind: 'line to the database cut', often: 2, strike: hit(toDatabase, 'a server', (line) => line.cutAll()) },
    { kind: 'line to the database half-open', often: 2, strike: hit(toDatabase, 'a server', (line) => mute([line], 200 + luck.below(3000))) },
    { kind: 'line to the database slow', often: 1, strike: hit(toDatabase, 'a server', (line) => slow([line], 120)) },
    { kind: 'line to the database shut', often: 1, strike: hit(toDatabase, 'a server', (line) => shut([line], 1000 + luck.below(4000))) },
    { kind: 'line to redis cut', often: 1, strike: hit(toRedis, 'a server', (line) => line.cutAll()) },
    { kind: 'line to redis half-open', often: 1, strike: hit(toRedis, 'a server', (line) => mute([line], 500 + luck.below(4000))) },
    { kind: 'line to redis slow', often: 1, strike: hit(toRedis, 'a server', (line) => slow([line], 400)) },
    { kind: 'line to redis shut', often: 1, strike: hit(toRedis, 'a server', (line) => shut([line], 1000 + luck.below(6000))) },
  ];
}
