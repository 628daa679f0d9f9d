import { setTimeout as wait } from 'node:timers/promises';
import { held, victim, type Misfortune, type Scene } from './misfortune.ts';

const DAY = 24 * 60 * 60 * 1000;

/** Whoever keeps the processes starts one again that found no database. */
async function begin(member: { start(): Promise<void> }): Promise<void> {
  for (let attempt = 1; ; attempt++) {
    try {
      return await member.start();
    } catch (reason) {
      if (attempt === 20) throw reason;
      await wait(500);
    }
  }
}

/** Servers and workers that are killed, held still, begun again in order, or whose clocks are set. */
export function toServers(scene: Scene): Misfortune[] {
  const { premises, busy, luck, troubles } = scene;

  const strike = (work: (station: NonNullable<ReturnType<typeof victim>>) => Promise<unknown>) => () => {
    const station = victim(scene);
    return station && { at: station.server.name, over: troubles.during(held(busy, station, () => work(station))) };
  };
  const freeze = (ms: () => number) =>
    strike(async (station) => {
      station.server.freeze();
      // A proxy in front asks every two seconds whether a server answers.
      const seen = setTimeout(() => (station.silent = true), 2000);
      await wait(ms());
      clearTimeout(seen);
      station.silent = false;
      station.server.thaw();
    });
  const killed = async (server: { kill(): Promise<void>; start(): Promise<void> }) => {
    await server.kill();
    await wait(luck.below(1500));
    await begin(server);
  };

  return [
    { kind: 'server killed', often: 3, strike: strike(({ server }) => killed(server)) },
    { kind: 'server and database killed', often: 1, strike: strike(async ({ server }) => {
      const pid = premises.cluster.pid();
      if (pid) process.kill(pid, 'SIGKILL');
      await killed(server);
    }) },
    { kind: 'server restarted in order', often: 2, strike: strike(async ({ server }) => {
      await server.stop();
      await begin(server);
    }) },
    { kind: 'server held still', often: 2, strike: freeze(() => 500 + luck.below(4000)) },
    { kind: 'server held still for long', often: 1, strike: freeze(() => 12_000 + luck.below(8000)) },
    { kind: 'clock of a server set', often: 2, strike() {
      const station = luck.pick(premises.stations);
      const ms = luck.pick([-2 * DAY, -3_600_000, -5000, 0, 5000, 3_600_000, 2 * DAY]);
      station.shiftClock(ms);
      return { at: `${station.server.name} by ${ms} ms`, over: Promise.resolve() };
    } },
    { kind: 'worker killed', often: 1, strike() {
      const free = premises.workers.filter(({ running }) => running);
      if (free.length === 0) return null;
      const worker = luck.pick(free);
      return { at: worker.name, over: killed(worker) };
    } },
  ];
}
