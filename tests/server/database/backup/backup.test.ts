import { randomUUID } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { gunzipSync, gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LogEntry } from '../../../../core/agreement/event.ts';
import { replay } from '../../../../core/agreement/replay.ts';
import { PROTOCOL } from '../../../../core/agreement/wire/socket.ts';
import { readBackup, writeBackup } from '../../../../server/database/backup/file.ts';
import { putBack } from '../../../../server/database/backup/putBack.ts';
import { backupLines } from '../../../../server/database/backup/take.ts';
import type { Connection } from '../../../../server/database/connection.ts';
import { createAuthority, type Authority } from '../../../../server/operations/authority.ts';
import type { Store } from '../../../../server/store/store.ts';
import { createTestDatabase, type TestDatabase } from '../../../support/database.ts';
import { layOut, oneMark, type LaidOut } from '../../../support/laidOut.ts';
import { inPostgres } from '../../../support/oneEnsemble.ts';

const folder = mkdtempSync(join(tmpdir(), 'bowline-backup-'));
const file = (name: string = randomUUID()): string => join(folder, `${name}.bowline`);
const databases: TestDatabase[] = [];
const open = async (): Promise<TestDatabase> => {
  const database = await createTestDatabase();
  databases.push(database);
  return database;
};
afterAll(async () => {
  await Promise.all(databases.map((database) => database.drop()));
  rmSync(folder, { recursive: true, force: true });
});

/** Every row of a database, in no order; the head and the tail left out. */
async function rowsOf(owner: Connection): Promise<string[]> {
  const lines: string[] = [];
  for await (const line of backupLines(owner, new Date(0))) lines.push(line);
  return lines.slice(1, -1).sort();
}

describe('a backup of a library at rest', () => {
  let source: TestDatabase;
  let store: Store;
  let laid: LaidOut;
  let path: string;
  beforeAll(async () => {
    source = await open();
    store = await inPostgres(source);
    laid = await layOut(store);
    const authority = createAuthority(store);
    const say = (name: string, input: unknown) => authority.submit(laid.part, { request: { operation: randomUUID(), name, input }, asker: { person: laid.principal.id, session: null } });
    await say('comment', { id: randomUUID(), measure: 1, proposal: null, answers: null, text: 'First line\nsecond, and \u2028 a rare one, \\n "quoted" \u{1D15E}' });
    await say('propose', oneMark());
    // Input that is nothing is kept as JSON's null and refused.
    await say('lock', null);
    path = file();
    await writeBackup(path, backupLines(source.owner, new Date('2026-11-26T10:00:00Z')));
  });
  afterAll(() => store.close());

  it('put back gives the same rows in every table, whatever is written in them', async () => {
    const target = await open();
    const put = await putBack(target.owner, readBackup(path));
    const rows = await rowsOf(source.owner);
    expect(put).toBe(rows.length);
    expect(await rowsOf(target.owner)).toEqual(rows);
  });

  it('is for its owner alone to read', () => {
    expect(statSync(path).mode & 0o777).toBe(0o600);
  });

  it('is not put into a library that holds something', async () => {
    await expect(putBack(source.owner, readBackup(path))).rejects.toThrow('There is something in this library already');
  });

  it('cut off, changed in one letter, or of a row too few, it is refused and leaves nothing', async () => {
    const target = await open();
    const text = gunzipSync(readFileSync(path)).toString();
    const lines = text.split('\n');
    const spoilt: [string, Buffer][] = [
      ['cut', readFileSync(path).subarray(0, -40)],
      ['letter', gzipSync(text.replace('Spring', 'Sprung'))],
      ['row', gzipSync(lines.toSpliced(3, 1).join('\n'))],
      ['tail', gzipSync(lines.slice(0, -2).join('\n'))],
    ];
    for (const [name, bytes] of spoilt) {
      writeFileSync(file(name), bytes);
      await expect(putBack(target.owner, readBackup(file(name)))).rejects.toThrow(/damaged/);
    }
    expect(await rowsOf(target.owner)).toEqual([]);
  });

  it('of another program’s making, or no backup at all, it is refused with the reason', async () => {
    const target = await open();
    const head = JSON.parse(gunzipSync(readFileSync(path)).toString().split('\n')[0]!) as { migrations: string[] };
    writeFileSync(file('newer'), gzipSync(`${JSON.stringify({ ...head, migrations: [...head.migrations, '29990101000000_later'] })}\n`));
    await expect(putBack(target.owner, readBackup(file('newer')))).rejects.toThrow('made by a newer Bowline (29990101000000_later)');
    writeFileSync(file('letter'), gzipSync('Dear librarian'));
    await expect(putBack(target.owner, readBackup(file('letter')))).rejects.toThrow('no backup of Bowline');
    writeFileSync(file('plain'), 'Dear librarian');
    await expect(putBack(target.owner, readBackup(file('plain')))).rejects.toThrow('no backup of Bowline');
    await expect(putBack(target.owner, readBackup(file('absent')))).rejects.toThrow('cannot be read (ENOENT)');
  });
});

/** How many rows each part has before the backup begins: near a snapshot, so that some fall into it. */
const BEFORE = 195;

describe('a backup taken while the section writes', () => {
  let source: TestDatabase;
  let target: TestDatabase;
  let [live, restored]: Store[] = [];
  let house: LaidOut[];
  let authority: Authority;
  /** Rows each part had before the backup began, and when it was done. */
  const before = new Map<string, number>();
  const full = new Map<string, LogEntry[]>();
  const logOf = async (store: Store, part: string) => (await store.log.entries(part, 0, 100_000))!;
  let alternating: string[];

  beforeAll(async () => {
    [source, target] = [await open(), await open()];
    live = await inPostgres(source);
    authority = createAuthority(live);
    house = [];
    for (let i = 0; i < 4; i++) house.push(await layOut(live));
    const speak = (at: LaidOut) => authority.submit(at.part, { request: { operation: randomUUID(), name: 'comment', input: { id: randomUUID(), measure: 1, proposal: null, answers: null, text: 'Lighter?' } }, asker: { person: at.player.id, session: null } });
    const propose = (at: LaidOut) => authority.submit(at.part, { request: { operation: randomUUID(), name: 'propose', input: oneMark() }, asker: { person: at.principal.id, session: null } });
    for (const at of house) await Promise.all(Array.from({ length: BEFORE }, (_, i) => (i % 5 ? speak(at) : propose(at))));
    let going = true;
    const written = { done: 0 };
    const [first, second, ...others] = house;
    alternating = [first!.part, second!.part];
    // Answered on the first part before anything is asked of the second.
    const inTurn = (async () => {
      while (going) for (const at of [first!, second!]) written.done += (await propose(at))?.ok ? 1 : 0;
    })();
    const atOnce = others.map(async (at) => {
      while (going) written.done += (await Promise.all([propose(at), speak(at), speak(at)])).length;
    });
    while (written.done < 40) await wait(5);
    for (const at of house) before.set(at.part, (await live.log.heads([at.part])).get(at.part)!);
    const path = file('load');
    // Read slowly, so that it lasts over many commits.
    const slowly = async function* () {
      let n = 0;
      for await (const line of backupLines(source.owner, new Date())) {
        if (n++ % 50 === 0) await wait(5);
        yield line;
      }
    };
    const began = written.done;
    await writeBackup(path, slowly());
    while (written.done < began + 20) await wait(5);
    going = false;
    await Promise.all([inTurn, ...atOnce]);
    for (const at of house) full.set(at.part, (await logOf(live, at.part)).entries);
    await putBack(target.owner, readBackup(path));
    restored = await inPostgres(target);
  }, 120_000);
  afterAll(async () => {
    await live?.close();
    await restored?.close();
  });

  it('holds every row that was answered before it began, and of each log an unbroken beginning', async () => {
    for (const { part } of house) {
      const { head, entries } = await logOf(restored!, part);
      expect(entries).toHaveLength(head);
      expect(head).toBeGreaterThanOrEqual(before.get(part)!);
      expect(entries).toEqual(full.get(part)!.slice(0, head));
    }
  });

  it('was overtaken: rows written meanwhile are in no part of it', async () => {
    const kept = await Promise.all(house.map(async ({ part }) => (await logOf(restored!, part)).head));
    const all = house.map(({ part }) => full.get(part)!.length);
    expect(kept.reduce((a, b) => a + b)).toBeLessThan(all.reduce((a, b) => a + b));
  });

  it('is of one moment over all parts: what was asked after an answer is not there without it', async () => {
    const [first, second] = await Promise.all(alternating.map(async (part) => (await logOf(restored!, part)).head));
    expect([0, 1]).toContain(first! - second!);
  });

  it('each log builds again the state of its snapshot, and what the server says of the part', async () => {
    const again = createAuthority(restored!);
    for (const { part } of house) {
      const { entries } = await logOf(restored!, part);
      const snapshot = await restored!.log.snapshot(part, PROTOCOL);
      expect(snapshot).toEqual(replay(entries.slice(0, snapshot!.seq)));
      expect((await again.current(part))!.state).toEqual(replay(entries));
    }
  });

  it('goes on: the next line is written after the last', async () => {
    const [at] = house;
    const { head } = await logOf(restored!, at!.part);
    const answer = await createAuthority(restored!).submit(at!.part, { request: { operation: randomUUID(), name: 'propose', input: oneMark() }, asker: { person: at!.principal.id, session: null } });
    expect(answer).toMatchObject({ ok: true, entry: { seq: head + 1 } });
  });
});
