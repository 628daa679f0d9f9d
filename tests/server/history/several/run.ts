import { randomUUID } from 'node:crypto';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import type { LogEntry } from '../../../../core/agreement/event.ts';
import { chance, type Chance } from '../../../support/chance.ts';
import { rolesOf } from '../../../../server/store/rolesOf.ts';
import { caller, type SignedIn } from '../library.ts';
import type { Proxy } from '../proxy.ts';
import type { Happened } from '../record/happened.ts';
import { print, recorder, steady, type Note } from '../record/record.ts';
import { slipsOfState } from './slipsOfState.ts';
import { furnish, viewOf, type House } from './furnish.ts';
import { longJobs } from './longJobs.ts';
import { toLines } from './misfortunes/lines.ts';
import { createTroubles, type Misfortune, type Scene } from './misfortunes/misfortune.ts';
import { toPeople } from './misfortunes/people.ts';
import { toServers } from './misfortunes/servers.ts';
import { toStores } from './misfortunes/stores.ts';
import { openPremises, type Premises } from './premises.ts';
import { openRoom, type Room } from './rooms.ts';
import { readShelves } from './shelves.ts';
import { smallDisk } from './smallDisk.ts';

export interface RunOptions {
  seed: number;
  seconds: number;
  /** Kept by the caller; everything else in it is removed. */
  folder: string;
  record: string;
  servers: number;
  workers: number;
  redis: boolean;
  /** People of each of the two ensembles who play, in so many processes. */
  players: number;
  roomfuls: number;
  /** Works on each ensemble's stands, two parts each; of these each person has so many open. */
  works: number;
  open: number;
  pause: [number, number];
  ahead: number;
  /** Milliseconds between two blows, from and up to. */
  blows: [number, number];
  /** Megabytes of a disk that can be filled; 0: the database lies on the ordinary one. */
  disk: number;
  /** Of everything that can go wrong, only these kinds; to look for one cause. */
  only?: RegExp;
  report?: (line: string) => void;
}

/** A beat and a little: what a lost hint kept back has come by then. */
const ONE_BEAT = 6500;

/** A history over real processes with everything that can go wrong, written to `record`. */
export async function run(options: RunOptions): Promise<void> {
  const { folder, seed, report = () => {} } = options;
  const luck = chance(seed);
  writeFileSync(options.record, '');
  const note = recorder(options.record);
  mkdirSync(folder, { recursive: true });
  const disk = options.disk ? smallDisk(join(folder, 'disk'), options.disk) : null;
  const rooms: Room[] = [];
  let premises: Premises | null = null;
  try {
    premises = await openPremises(join(folder, 'own'), disk?.path ?? join(folder, 'data'), options);
    const houses = await furnish(premises, ['Northern Strings', 'Southern Strings'], options.players, options.works);
    report(`${houses.reduce((sum, { parts }) => sum + parts.length, 0)} parts laid out for ${2 * options.players} people; ${disk ? 'the disk can be filled' : 'no disk can be filled here'}.`);
    await play(options, { premises, houses, luck, note, rooms, disk: disk ? disk.path : null });
  } finally {
    await Promise.all(rooms.map((room) => room.end().catch(() => {})));
    await premises?.close();
    if (premises) writeFileSync(`${options.record}.said`, premises.stations.flatMap(({ server }) => server.lines.map((line) => `${server.name}: ${line}\n`)).join(''));
    disk?.leave();
    for (const own of ['own', 'disk', 'data']) rmSync(join(folder, own), { recursive: true, force: true });
  }
}

async function play(options: RunOptions, { premises, houses, luck, note, rooms, disk }: { premises: Premises; houses: House[]; luck: Chance; note: Note; rooms: Room[]; disk: string | null }): Promise<void> {
  const { report = () => {} } = options;
  const players = houses.flatMap((house) => house.players);
  const people = houses.flatMap((house) => [house.librarian, ...house.players].map(({ id }) => ({ id, ensemble: house.ensemble })));
  note({ k: 'cast', seed: options.seed, servers: premises.stations.length, redis: premises.redis !== null, workers: premises.workers.length, people, parts: houses.flatMap(({ ensemble, parts }) => parts.map((id) => ({ id, ensemble }))) });
  const shelves = readShelves(premises.cluster);
  const doors = new Map<string, Proxy>();
  for (const [index, { id }] of players.entries()) doors.set(id, await premises.door(index));
  const signedIn = new Map<string, SignedIn>(players.map((who) => [who.id, who]));
  const lines: Scene['lines'] = new Map();
  let acknowledged = 0;
  const samples: { op: string; part: string; seq: number; person: string }[] = [];
  const scene: Scene = {
    premises,
    houses,
    rooms,
    doors,
    signedIn,
    lines,
    luck,
    note,
    address() {
      const running = premises.stations.filter((station) => !scene.busy.has(station) && station.server.running);
      return luck.pick(running.length ? running : premises.stations).server.address;
    },
    busy: new Set(),
    away: new Set(),
    disk,
    heads: () => shelves.heads(),
    troubles: createTroubles(steady),
  };

  const views = new Map(await Promise.all(houses.flatMap((house) => house.parts.map(async (part) => [part, (await viewOf(premises.stations[0]!.server.address, house.players[1]!, part)).part] as const))));
  for (let index = 0; index < options.roomfuls; index++) {
    const here = players.filter((_, n) => n % options.roomfuls === index);
    const briefs = here.map((who) => {
      const house = houses.find((one) => one.players.includes(who))!;
      const other = houses.find((one) => one !== house)!;
      const leads = house.players[0] === who;
      const place = house.seating.seats.find(({ person }) => person === who.id)!;
      const open = [...house.parts].sort(() => luck.next() - 0.5).slice(0, options.open);
      return { id: who.id, name: who.name, cookie: who.cookie, address: `http://127.0.0.1:${doors.get(who.id)!.port}`, roles: rolesOf(false, leads), seat: place.seat, leads, parts: open, foreign: luck.pick(other.parts) };
    });
    const brief = { seed: options.seed * 31 + index, record: options.record, queues: join(options.folder, 'own', 'queues'), people: briefs, parts: Object.fromEntries(views), seats: houses[0]!.seating.seats.map(({ seat }) => seat), pause: options.pause, ahead: options.ahead };
    rooms.push(
      await openRoom(join(options.folder, 'own'), index, brief, {
        acknowledged(count, sample) {
          acknowledged += count;
          if (sample) samples.push(sample);
        },
        status: (person, status, t) => void lines.set(person, { status, t }),
      }),
    );
  }

  const start = steady();
  const end = start + options.seconds * 1000;
  const under: Promise<unknown>[] = [];
  let blows = 0;
  let over = false;
  const strikes = [...toServers(scene), ...toStores(scene), ...toLines(scene), ...toPeople(scene)].filter(({ kind }) => options.only?.test(kind) ?? true);
  const next = deck(strikes, luck);

  async function misfortunes(): Promise<void> {
    const [least, most] = options.blows;
    while (steady() < end) {
      const before = acknowledged;
      await wait(least + luck.below(most - least));
      // Something was written since the last blow, or ten seconds have gone: on a slow machine there would otherwise be blows only.
      for (let n = 0; n < 100 && acknowledged < before + 20; n++) await wait(100);
      const { kind, strike } = next();
      const struck = strike();
      if (!struck) continue;
      blows += 1;
      note({ k: 'fault', t: steady(), kind, at: struck.at });
      under.push(struck.over.catch((reason: unknown) => report(`${kind}: ${String(reason)}`)));
    }
  }

  async function resend(): Promise<void> {
    while (steady() < end) {
      await wait(400);
      const one = samples.length ? luck.pick(samples) : null;
      if (!one) continue;
      const call = caller(scene.address, signedIn.get(one.person)!.cookie);
      const { entries } = await call<{ entries?: LogEntry[] }>('GET', `/api/parts/${one.part}/log?after=${one.seq - 1}`);
      const first = entries?.[0];
      if (!first) continue;
      const answer = await call<{ entry?: LogEntry; code?: string }>('POST', `/api/parts/${one.part}/operations/${first.name}`, { operation: one.op, input: first.input });
      // Whoever was signed out just now is told so, and nothing about the operation.
      if (answer.code !== 'SIGNED_OUT' && answer.code !== 'TOO_MUCH') note({ k: 'resent', op: one.op, first: print(first), again: answer.entry ? print(answer.entry) : JSON.stringify(answer) });
    }
  }

  async function pry(): Promise<void> {
    while (steady() < end) {
      await wait(1500);
      const [house, other] = luck.happens(0.5) ? houses : houses.toReversed();
      const who = luck.pick(house!.players);
      const part = luck.pick(other!.parts);
      const call = caller(scene.address, signedIn.get(who.id)!.cookie);
      const tries: [string, Promise<Record<string, unknown>>, (answer: Record<string, unknown>) => boolean][] = [
        ['reading the part', call('GET', `/api/parts/${part}`), (answer) => 'part' in answer],
        ['reading the log', call('GET', `/api/parts/${part}/log?after=0`), (answer) => 'entries' in answer],
        ['writing by HTTP', call('POST', `/api/parts/${part}/operations/comment`, { operation: randomUUID(), input: { id: randomUUID(), measure: 1, text: 'From another house.' } }), (answer) => answer.ok === true],
      ];
      for (const [how, answer, got] of tries) note({ k: 'pried', t: steady(), person: who.id, part, how, got: got(await answer) ? 1 : 0 });
    }
  }

  /** Whoever keeps the processes would start one again that ended by itself; it is noted, for it must not happen. */
  async function keepUp(): Promise<void> {
    while (!over) {
      await wait(200);
      for (const station of premises.stations) {
        const { server } = station;
        if (server.running || scene.busy.has(station)) continue;
        note({ k: 'fell', t: steady(), name: server.name, said: server.lines.slice(-30) });
        await server.start().catch((reason: unknown) => report(String(reason)));
      }
    }
  }

  async function tellHowFar(): Promise<void> {
    for (let n = 1; steady() < end; n++) {
      await wait(Math.max(0, Math.min(start + n * 15_000, end) - steady()));
      report(`${Math.round((steady() - start) / 1000)} s: ${acknowledged} acknowledged, ${blows} faults`);
    }
  }

  const keeping = keepUp();
  const jobs = premises.workers.length ? longJobs(houses, () => scene.address()) : null;
  await Promise.all([misfortunes(), resend(), pry(), tellHowFar(), jobs?.handIn(end)]);
  await Promise.all(under);
  for (const line of doors.values()) line.delay(0);
  const quiet = await Promise.all(rooms.map((room) => room.rest()));
  report(`At rest: ${quiet.every((one) => one) ? 'everybody' : 'not everybody'}.`);
  await wait(ONE_BEAT);
  await Promise.all(rooms.map((room) => room.rest()));
  await Promise.all(rooms.splice(0).map((room) => room.end()));
  await jobs?.settle(shelves, note);
  over = true;
  await keeping;
  await leaveWord(houses, premises, note);
  await shelves.write(houses.flatMap((house) => house.parts), note);
}

/** What each server says of the parts at the end, one part each. */
async function leaveWord(houses: House[], premises: Premises, note: Note): Promise<void> {
  for (const house of houses) {
    for (const [index, part] of house.parts.entries()) {
      const station = premises.stations[index % premises.stations.length]!;
      const { state, head } = await viewOf(station.server.address, house.librarian, part);
      const shown: Happened = { k: 'shown', part, head, slips: slipsOfState(state), state: print(state) };
      note(shown);
    }
  }
}

/** Drawn without putting back, so that a short run meets every kind too. */
function deck(strikes: Misfortune[], luck: Chance): () => Misfortune {
  let left: Misfortune[] = [];
  return () => {
    if (left.length === 0) left = strikes.flatMap((one) => Array.from({ length: one.often }, () => one)).sort(() => luck.next() - 0.5);
    return left.pop()!;
  };
}
