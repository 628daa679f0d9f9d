import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { measureHistory } from '../../core/agreement/measureHistory.ts';
import { replay } from '../../core/agreement/replay.ts';
import type { PartView, Shelf } from '../../core/agreement/wire/http.ts';
import { createCounts } from '../../server/limits/counts.ts';
import { createPersonLimit } from '../../server/limits/personLimit.ts';
import { hasPassed } from '../../server/mail/hasPassed.ts';
import { until } from '../support/listener.ts';
import { freePort, startServer, type ServerProcess } from '../support/serverProcess.ts';
import { caller, signIn, wholeLog } from './history/library.ts';
import { Person } from './history/person.ts';

const DAY = 86_400_000;
const PATIENT = { timeout: 180_000 };
const PRELOAD = pathToFileURL(join(import.meta.dirname, '../support/shiftedClock.mjs')).href;

/** The server's time of day alone is set wrong; the database keeps its own, as on another machine. */
describe('the clock of a server is set 40 days on, right, and 40 days back while people write', PATIENT, () => {
  let folder: string, clock: string, server: ServerProcess, address: string, part: string, cookie: string;
  const people: Person[] = [];
  const acknowledged = new Map<string, number>();
  let said = 0;

  const shift = (days: number) => writeFileSync(clock, String(days * DAY));
  const log = () => wholeLog(address, cookie, part);
  /** Each says something of measure 1; resolves when every one of them is written. */
  function say(): { operations: string[]; written: Promise<unknown> } {
    const all = people.map(({ open: [one] }) => {
      const operation = one!.session.submit('comment', { id: crypto.randomUUID(), measure: 1, proposal: null, answers: null, text: `Said ${(said += 1)}.` });
      return { operation, settled: one!.session.settled(operation).then((outcome) => (outcome.ok ? acknowledged.set(operation, outcome.seq) : Promise.reject(new Error(outcome.refusal.code)))) };
    });
    return { operations: all.map(({ operation }) => operation), written: Promise.all(all.map(({ settled }) => settled)) };
  }

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'bowline-clock-'));
    clock = join(folder, 'shift');
    shift(0);
    const port = await freePort();
    address = `http://127.0.0.1:${port}`;
    server = await startServer({ PORT: String(port), HOST: '127.0.0.1', BOWLINE_DATA: join(folder, 'data'), SHIFTED_CLOCK: clock, NODE_OPTIONS: `--import ${PRELOAD}` }, ['--demo']);
    cookie = (await signIn(address, server.link('librarian'))).cookie;
    const shelf = await caller(address, cookie)<Shelf>('GET', '/api/shelf');
    part = shelf.programmes.flatMap(({ works }) => works).find(({ title }) => title.startsWith('Low Water'))!.parts[0]!.id;
    for (const role of ['principal', 'player']) {
      const who = await signIn(address, server.link(role));
      const person = new Person(who, address, [await caller(address, who.cookie)<PartView>('GET', `/api/parts/${part}`)]);
      person.load();
      people.push(person);
    }
    await until(() => people.every((person) => person.quiet()));
  }, PATIENT.timeout);
  afterAll(async () => {
    people.forEach((person) => person.close());
    server.kill('SIGTERM');
    expect(await server.ended).toBe(0);
    rmSync(folder, { recursive: true, force: true });
  });

  it('40 days on, sign-ins of 30 days are over at the door, which goes by the server’s clock; what is written meanwhile waits', async () => {
    await say().written;
    shift(40);
    expect((await fetch(`${address}/api/me`, { headers: { cookie } })).status).toBe(401);
    // The commit goes by the database's clock: an open line is good until the next beat cuts it.
    await until(() => people.every(({ connection }) => connection.status() === 'away'));
    const { operations } = say();
    expect(people.map((person) => person.waiting().flat())).toEqual(operations.map((operation) => [operation]));
    shift(0);
    await until(() => people.every((person) => person.quiet()));
    const rows = await log();
    for (const operation of operations) expect(rows.filter((row) => row.operation === operation)).toHaveLength(1);
  });

  it('in the moment after the clock was set nobody is thrown out of what they are writing', async () => {
    shift(40);
    await say().written;
    shift(0);
    await until(() => people.every((person) => person.quiet()));
    await say().written;
  });

  it('40 days back everybody goes on', async () => {
    shift(-40);
    for (let n = 0; n < 5; n++) await say().written;
    await until(() => people.every((person) => person.quiet()));
    expect((await fetch(`${address}/api/me`, { headers: { cookie } })).status).toBe(200);
  });

  it('right again, the log is dense and in the order of its numbers, though its times are not in order', async () => {
    shift(0);
    await say().written;
    await until(() => people.every((person) => person.quiet()));
    const rows = await log();
    expect(rows.map(({ seq }) => seq)).toEqual(rows.map((_, index) => index + 1));
    for (const [operation, seq] of acknowledged) expect(rows[seq - 1]!.operation).toBe(operation);
    const times = rows.map(({ at }) => Date.parse(at));
    expect(times.some((time, index) => index > 0 && time > times[index - 1]! + 30 * DAY)).toBe(true);
    expect(times.some((time, index) => index > 0 && time < times[index - 1]! - 30 * DAY)).toBe(true);
    for (const { open } of people) expect(open[0]!.session.getSnapshot().confirmed).toEqual(replay(rows));
    const told = measureHistory(rows, 1).map(({ seq }) => seq);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.length).toBeGreaterThanOrEqual(said);
    expect(server.lines.filter((line) => /Fault|TypeError|RangeError/.test(line))).toEqual([]);
  });
});

describe('what counts time by the clock of the day', () => {
  afterEach(() => void vi.useRealTimers());

  it('shuts nobody out for longer than its window when the clock is set back 40 days', async () => {
    vi.useFakeTimers({ toFake: ['Date'] });
    const counts = createCounts(null);
    await counts.add('person', 60);
    vi.setSystemTime(Date.now() - 40 * DAY);
    expect((await counts.add('person', 60)).left).toBeLessThanOrEqual(60_000);
    expect((await counts.read('person', 60)).left).toBeLessThanOrEqual(60_000);
    let now = 0;
    const may = createPersonLimit(counts, 30, () => now);
    await counts.add('person:Ilse', 60, 20);
    vi.setSystemTime(Date.now() - 40 * DAY);
    for (let n = 0; n < 25; n++) expect(may('Ilse')).toBe(true);
    await new Promise((resolve) => setImmediate(resolve));
    expect(may('Ilse')).toBe(false);
    now = 60_001;
    expect(may('Ilse')).toBe(true);
  });

  it('sends the next letter although the last was sent 40 days from now', () => {
    const now = new Date('2026-11-26T12:00:00Z');
    const at = (ms: number) => new Date(now.getTime() + ms);
    expect([-2 * DAY, -DAY, -DAY + 1, 0, 1, 40 * DAY].map((ms) => hasPassed(DAY, at(ms), now))).toEqual([true, true, false, false, true, true]);
  });
});
