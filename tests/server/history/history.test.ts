import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LogEntry } from '../../../core/agreement/event.ts';
import { replay } from '../../../core/agreement/replay.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { APP, DATABASE, DOOR } from '../../../server/database/connection.ts';
import { openPostgres } from '../../../server/store/postgres.ts';
import { chance } from '../../support/chance.ts';
import { freePort, startServer } from '../../support/serverProcess.ts';
import { nextAct } from './acts.ts';
import { misfortune, type Faults } from './faults.ts';
import { caller, furnish, wholeLog, type Furnished } from './library.ts';
import { Person } from './person.ts';
import { openProxy, type Proxy } from './proxy.ts';

const SECONDS = Number(process.env.BOWLINE_HISTORY_SECONDS ?? 45);
/** A slow machine goes on until everything has happened at least once. */
const LONGEST = 4 * SECONDS;
/** Rows a part has before anything goes wrong, so that the next snapshot falls into the trouble. */
const TALK = 190;
const SEED = Number(process.env.BOWLINE_HISTORY_SEED ?? 4640);

/** What was observed while everything went wrong; the guarantees are then checked against the log that is left. */
interface Observed {
  /** Ids written by clients: part and who. */
  written: Map<string, { part: string; by: string }>;
  acknowledged: { operation: string; part: string; seq: number }[];
  refused: Set<string>;
  resent: { first: LogEntry; again: unknown }[];
  /** A reload: what waited before, and what waited right after, by part. */
  reloads: { before: string[][]; after: string[][] }[];
  /** Rows [from, to] were committed while this person had no seat. */
  unseated: { person: string; part: string; from: number; to: number }[];
  logs: Map<string, LogEntry[]>;
}

describe(`a history of eight people over ${SECONDS} s of cuts and kills (seed ${SEED})`, () => {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-history-'));
  const data = join(folder, 'data');
  const luck = chance(SEED);
  const seen: Observed = { written: new Map(), acknowledged: [], refused: new Set(), resent: [], reloads: [], unseated: [], logs: new Map() };
  let furnished: Furnished;
  let faults: Faults;
  let proxy: Proxy;
  let direct: string;
  let people: Person[] = [];
  let old: Person;
  let retries = 0;

  const collect = (person: Person) => person.open.forEach(({ session }) => session.getSnapshot().refusals.forEach(({ operation }) => seen.refused.add(operation)));

  function act(person: Person, leads: boolean): void {
    const { view, session } = luck.pick(person.open);
    const snapshot = session.getSnapshot();
    if (snapshot.waiting.length > 12) return;
    const { name, input } = nextAct(snapshot.state, view.part, furnished.seating.seats.map(({ seat }) => seat), leads, luck);
    const operation = session.submit(name, input as never);
    seen.written.set(operation, { part: view.id, by: person.id });
    void session.settled(operation).then((outcome) => {
      if (outcome.ok) seen.acknowledged.push({ operation, part: view.id, seq: outcome.seq });
    });
  }

  async function resend(): Promise<void> {
    if (seen.acknowledged.length === 0) return;
    const { operation, part, seq } = luck.pick(seen.acknowledged);
    const { cookie } = furnished.people.find(({ id }) => id === seen.written.get(operation)?.by)!;
    const call = caller(direct, cookie);
    const { entries } = await call<{ entries: LogEntry[] }>('GET', `/api/parts/${part}/log?after=${seq - 1}`);
    const first = entries[0]!;
    const answer = await call<{ entry?: LogEntry }>('POST', `/api/parts/${part}/operations/${first.name}`, { operation, input: first.input });
    retries += 1;
    seen.resent.push({ first, again: answer.entry });
  }

  async function reload(person: Person): Promise<void> {
    collect(person);
    const before = person.waiting();
    person.reload();
    await wait(0);
    seen.reloads.push({ before, after: person.waiting() });
  }

  async function unseat(): Promise<void> {
    const [, ...players] = furnished.people;
    const person = players[luck.below(6)]!;
    const librarian = caller(direct, furnished.people.at(-1)!.cookie);
    const url = `/api/sections/${furnished.section}/seating`;
    const heads = () => Promise.all(furnished.views[0]!.map(async ({ id }) => (await librarian<{ head: number }>('GET', `/api/parts/${id}/log?after=2000000`)).head));
    await librarian('PUT', url, { ...furnished.seating, seats: furnished.seating.seats.map((place) => (place.person === person.id ? { ...place, person: null } : place)) });
    const from = await heads();
    await wait(1500);
    const to = await heads();
    await librarian('PUT', url, furnished.seating);
    furnished.views[0]!.forEach(({ id }, index) => seen.unseated.push({ person: person.id, part: id, from: from[index]! + 1, to: to[index]! }));
  }

  async function talk(part: string): Promise<void> {
    const call = caller(direct, furnished.people[0]!.cookie);
    const say = (n: number) => call('POST', `/api/parts/${part}/operations/comment`, { operation: crypto.randomUUID(), input: { id: crypto.randomUUID(), measure: 1 + (n % 8), text: `Thought ${n}.` } });
    await Promise.all(Array.from({ length: TALK }, (_, n) => say(n)));
  }

  /** Something was written since the last blow, or ten seconds have gone: on a slow machine there would otherwise be blows only. */
  async function strikeOnceMoved(): Promise<void> {
    const before = seen.acknowledged.length;
    const end = performance.now() + 10_000;
    while (seen.acknowledged.length < before + 8 && performance.now() < end) await wait(50);
    await faults.strike();
  }

  const happened = () => {
    const { cuts, swallowed, delayed } = proxy.counts;
    const { serverKills, postgresKills } = faults.counts;
    return [seen.refused.size, seen.acknowledged.length - 99, seen.resent.length, seen.reloads.length, cuts, swallowed, delayed, serverKills, postgresKills, seen.unseated.length];
  };

  beforeAll(async () => {
    const port = await freePort();
    const env = { PORT: String(port), HOST: '127.0.0.1', BOWLINE_DATA: data };
    const server = await startServer(env);
    direct = `http://127.0.0.1:${port}`;
    furnished = await furnish(direct, server.link('librarian'));
    proxy = await openProxy(port);
    faults = misfortune(luck, proxy, data, env, server);
    people = furnished.people.map((who, index) => new Person(who, `http://127.0.0.1:${proxy.port}`, furnished.views[index]!));
    people.forEach((person) => person.load());
    old = new Person(furnished.people[0]!, direct, furnished.views[0]!);

    await Promise.all(furnished.views[0]!.map(({ id }) => talk(id)));
    const start = performance.now();
    const over = () => performance.now() > start + SECONDS * 1000 && (Math.min(...happened()) > 0 || performance.now() > start + LONGEST * 1000);
    const during = async (pause: () => number, work: () => unknown) => {
      while (!over()) {
        await work();
        await wait(pause());
      }
    };
    await Promise.all([
      ...people.map((person, index) => during(() => 30 + luck.below(120), () => act(person, index === 0))),
      during(() => 700 + luck.below(900), strikeOnceMoved),
      during(() => 300 + luck.below(400), resend),
      during(() => 1500 + luck.below(1500), () => reload(luck.pick(people))),
      during(() => 3000 + luck.below(3000), unseat),
    ]);
    old.load(PROTOCOL - 1);
    old.open[0]!.session.submit('comment', { id: crypto.randomUUID(), measure: 1, text: 'From a page of last year.' });
    while (!people.every((person) => person.quiet())) await wait(100);
    people.forEach(collect);
    for (const { id } of furnished.views[0]!) seen.logs.set(id, await wholeLog(direct, furnished.people[0]!.cookie, id));
  }, (LONGEST + 180) * 1000);

  afterAll(async () => {
    people.forEach((person) => person.close());
    old?.close();
    await proxy?.close();
    faults?.server().kill('SIGTERM');
    await faults?.server().ended;
    rmSync(folder, { recursive: true, force: true });
  });

  const rows = () => [...seen.logs].flatMap(([part, log]) => log.map((entry) => ({ part, entry })));

  it('everything that can go wrong did', () => {
    const { connections, cuts, swallowed, delayed } = proxy.counts;
    console.log(`history: ${seen.written.size} operations written, ${rows().length - 2 * TALK} in the log (and ${2 * TALK} before), ${seen.refused.size} refused, ${seen.acknowledged.length} acknowledged; ${retries} sent again by hand; ${connections} connections, ${cuts} cut, ${swallowed} pieces swallowed, ${delayed} delayed; ${seen.reloads.length} reloads; ${faults.counts.serverKills} kills of the server, ${faults.counts.postgresKills} of PostgreSQL; ${seen.unseated.length / 2} people unseated for a while`);
    expect(rows().length).toBeGreaterThan(2 * TALK + 50);
    expect(Math.min(...happened())).toBeGreaterThan(0);
  });

  it('1: what was acknowledged is in the log, at the place that was said', () => {
    for (const { operation, part, seq } of seen.acknowledged) expect(seen.logs.get(part)![seq - 1]?.operation).toBe(operation);
  });

  it('2: an id sent again got the same answer, and no id has two rows', () => {
    for (const { first, again } of seen.resent) expect(again).toEqual(first);
    const ids = rows().map(({ entry }) => entry.operation);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('3: the log of each part counts 1, 2, 3 ... without a gap', () => {
    for (const log of seen.logs.values()) expect(log.map((entry) => entry.seq)).toEqual(log.map((_, index) => index + 1));
  });

  it('4 and 5: every client, quiet now, has exactly what the log comes to, though it took every row from a bad line', () => {
    for (const { open } of people) for (const { view, session } of open) expect(session.getSnapshot().confirmed).toEqual(replay(seen.logs.get(view.id)!));
  });

  it('6: a snapshot and the rows after it come to the same as the whole log', async () => {
    const as = (user: string) => ({ host: join(data, 'socket'), port: 5432, user, database: DATABASE });
    const kept = openPostgres({ app: as(APP), door: as(DOOR) });
    const { id } = (await kept.door.ensembles())[0]!;
    const store = kept.of(id);
    let found = 0;
    for (const [part, log] of seen.logs) {
      const snapshot = await store.log.snapshot(part, PROTOCOL);
      if (!snapshot) continue;
      found += 1;
      expect(snapshot).toEqual(replay(log.slice(0, snapshot.seq)));
      expect(replay(log.slice(snapshot.seq), snapshot)).toEqual(replay(log));
    }
    await kept.close();
    expect(found).toBeGreaterThan(0);
  });

  it('7: what was refused left no row, and shows on no client', () => {
    const logged = new Set(rows().map(({ entry }) => entry.operation));
    expect([...seen.refused].filter((operation) => logged.has(operation))).toEqual([]);
    for (const { open } of people) for (const { session } of open) expect(session.getSnapshot().state).toEqual(session.getSnapshot().confirmed);
  });

  it('8: nobody wrote a row while they had no seat', () => {
    for (const { person, part, from, to } of seen.unseated) expect(seen.logs.get(part)!.slice(from - 1, to).filter((entry) => entry.by === person)).toEqual([]);
  });

  it('9: nothing written was lost: each id, over every reload, is in the log or was refused', () => {
    // An answer may arrive in the very moment of a reload, before the queue on disk forgets the id; it is then sent again, which changes nothing.
    for (const { before, after } of seen.reloads) {
      after.forEach((ids, part) => {
        expect(ids.filter((id) => !seen.written.has(id))).toEqual([]);
        expect(before[part]!.filter((id) => ids.includes(id))).toEqual(ids.filter((id) => before[part]!.includes(id)));
      });
    }
    const logged = new Set(rows().map(({ entry }) => entry.operation));
    expect([...seen.written.keys()].filter((operation) => !logged.has(operation) && !seen.refused.has(operation))).toEqual([]);
  });

  it('10: a page of another age was told so, kept its line, and wrote nothing', () => {
    const { status, waiting } = old.open[0]!.session.getSnapshot();
    expect(status).toBe('oldProgram');
    expect(waiting).toHaveLength(1);
    expect(rows().some(({ entry }) => entry.operation === waiting[0]!.operation)).toBe(false);
  });

  it('11: after a proposal is decided nothing more is decided or voted about it', () => {
    for (const log of seen.logs.values()) {
      const decided = new Set<string>();
      for (const event of log.flatMap((entry) => entry.events)) {
        const about = event.type === 'adopted' || event.type === 'setAside' || event.type === 'voteCast' ? event.proposal : event.type === 'withdrawn' || event.type === 'revised' ? event.id : null;
        if (about === null) continue;
        expect(decided.has(about)).toBe(false);
        if (event.type === 'adopted' || event.type === 'setAside' || event.type === 'withdrawn') decided.add(about);
      }
    }
  });
});
