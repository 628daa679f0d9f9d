import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LogEntry } from '../../../core/agreement/event.ts';
import { replay } from '../../../core/agreement/replay.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { createAuthority, type Authority } from '../../../server/operations/authority.ts';
import type { Answer } from '../../../server/operations/rule.ts';
import type { Store } from '../../../server/store/store.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { smallPart } from '../../support/smallPart.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';

let database: TestDatabase;
const KINDS: [string, () => Promise<OneEnsemble>][] = [
  ['memory', inMemory],
  ['PostgreSQL', async () => inPostgres((database = await createTestDatabase()))],
];

describe.each(KINDS)('operations on a store in %s', (kind, open) => {
  let store: OneEnsemble;
  beforeAll(async () => (store = await open()));
  afterAll(async () => {
    await store.close();
    if (kind === 'PostgreSQL') await database.drop();
  });

  interface House extends LaidOut {
    authority: Authority;
    heard: LogEntry[];
  }
  async function house(): Promise<House> {
    const laid = await layOut(store);
    const heard: LogEntry[] = [];
    const authority = createAuthority(store, (part, entries) => part === laid.part && heard.push(...entries));
    return { ...laid, authority, heard };
  }
  const ask = (at: House, person: { id: string }, name: string, input: unknown, operation: string = randomUUID()) => at.authority.submit(at.part, { request: { operation, name, input }, asker: { person: person.id, session: null } });
  const log = async (at: House) => (await store.log.entries(at.part, 0, 10_000))!;
  const code = (answer: Answer | null) => (answer && 'refusal' in answer ? answer.refusal.code : null);

  it('a principal proposes and inks in, a player votes; the log says it all in order', async () => {
    const at = await house();
    const id = randomUUID();
    expect(await ask(at, at.principal, 'propose', oneMark(id))).toMatchObject({ ok: true, entry: { seq: 1, by: at.principal.id, byName: at.principal.name } });
    expect(await ask(at, at.player, 'castVote', { proposal: id, revision: 1, measure: 1, vote: 'for' })).toMatchObject({ ok: true, entry: { seq: 2 } });
    expect(await ask(at, at.principal, 'adopt', { proposal: id, revision: 1, why: 'Agreed.' })).toMatchObject({ ok: true, entry: { seq: 3 } });
    const { entries } = await log(at);
    expect(at.heard).toEqual(entries);
    expect(replay(entries).proposals[id]).toMatchObject({ status: 'adopted', votes: { 1: { [at.player.id]: 'for' } } });
    expect((await at.authority.current(at.part))!.state).toEqual(replay(entries));
  });

  it('an id sent again, alone or together, is one row and one answer (guarantee 2)', async () => {
    const at = await house();
    const operation = randomUUID();
    const input = oneMark();
    const together = await Promise.all([1, 2, 3, 4, 5].map(() => ask(at, at.principal, 'propose', input, operation)));
    const later = await ask(at, at.principal, 'propose', input, operation);
    const elsewhere = await createAuthority(store).submit(at.part, { request: { operation, name: 'propose', input }, asker: { person: at.principal.id, session: null } });
    for (const answer of [...together, later, elsewhere]) expect(answer).toEqual(together[0]);
    expect((await log(at)).head).toBe(1);
    expect(at.heard).toHaveLength(1);
  });

  it('a refused id keeps its refusal, even when the same would be let through now (guarantee 2)', async () => {
    const at = await house();
    const id = randomUUID();
    const operation = randomUUID();
    const vote = { proposal: id, revision: 1, measure: 1, vote: 'for' };
    expect(code(await ask(at, at.player, 'castVote', vote, operation))).toBe('UNKNOWN_PROPOSAL');
    await ask(at, at.principal, 'propose', oneMark(id));
    expect(code(await ask(at, at.player, 'castVote', vote, operation))).toBe('UNKNOWN_PROPOSAL');
    expect(await ask(at, at.player, 'castVote', vote)).toMatchObject({ ok: true });
  });

  it('an id that belongs to someone else, or to another part, is refused and gives nothing away', async () => {
    const at = await house();
    const other = await house();
    const operation = randomUUID();
    await ask(at, at.principal, 'propose', oneMark(), operation);
    expect(await ask(at, at.player, 'propose', oneMark(), operation)).toMatchObject({ ok: false, refusal: { code: 'ALREADY_THERE' } });
    expect(await ask(other, other.principal, 'propose', oneMark(), operation)).toMatchObject({ ok: false, refusal: { code: 'ALREADY_THERE' } });
  });

  it('one id sent to two parts in the same moment is written in one of them', async () => {
    for (let round = 0; round < 5; round++) {
      const [at, other] = [await house(), await house()];
      const operation = randomUUID();
      const answers = await Promise.all([ask(at, at.principal, 'propose', oneMark(), operation), ask(other, other.principal, 'propose', oneMark(), operation)]);
      expect(answers.map((answer) => answer?.ok).sort()).toEqual([false, true]);
      expect((await log(at)).head + (await log(other)).head).toBe(1);
    }
  });

  it('many at once are numbered densely, and everybody hears them in order (guarantees 3 and 5)', async () => {
    const at = await house();
    const answers = await Promise.all(Array.from({ length: 300 }, (_, index) => ask(at, index % 2 ? at.principal : at.player, 'propose', oneMark())));
    expect(answers.every((answer) => answer?.ok)).toBe(true);
    const { entries } = await log(at);
    expect(entries.map((entry) => entry.seq)).toEqual(Array.from({ length: 300 }, (_, index) => index + 1));
    expect(at.heard).toEqual(entries);
  });

  it('a snapshot and the rows after it are the replayed log (guarantee 6)', async () => {
    const at = await house();
    for (let batch = 0; batch < 5; batch++) await Promise.all(Array.from({ length: 90 }, () => ask(at, at.principal, 'propose', oneMark())));
    for (let more = 0; more < 3; more++) await ask(at, at.principal, 'propose', oneMark());
    const snapshot = (await store.log.snapshot(at.part, PROTOCOL))!;
    const { entries } = await log(at);
    expect(snapshot.seq).toBeGreaterThanOrEqual(200);
    expect(snapshot.seq).toBeLessThan(453);
    expect(replay(entries.slice(0, snapshot.seq))).toEqual(snapshot);
    expect((await createAuthority(store).current(at.part))!.state).toEqual(replay(entries));
  });

  it('two processes on one part write one dense log, and each tells its own followers every row', async () => {
    const at = await house();
    const heard: LogEntry[] = [];
    const twin = createAuthority(store, (_part, entries) => heard.push(...entries));
    const second = { ...at, authority: twin };
    await Promise.all([at.authority.current(at.part), twin.current(at.part)]);
    for (let round = 0; round < 6; round++) await Promise.all([ask(at, at.principal, 'propose', oneMark()), ask(second, at.player, 'propose', oneMark()), ask(at, at.player, 'propose', oneMark())]);
    await ask(at, at.principal, 'propose', oneMark());
    await ask(second, at.principal, 'propose', oneMark());
    const { entries, head } = await log(at);
    expect(head).toBe(20);
    expect(heard).toEqual(entries);
    expect(at.heard).toEqual(entries.slice(0, at.heard.length));
    expect(at.heard.length).toBeGreaterThanOrEqual(19);
  });

  it('whoever lost the right between asking and committing is refused (guarantee 8)', async () => {
    const at = await house();
    expect(await ask(at, at.player, 'propose', oneMark())).toMatchObject({ ok: true });
    await store.sections.seat(at.section, { seats: [{ seat: '1o', person: at.principal.id }], principal: at.principal.id });
    expect(code(await ask(at, at.player, 'propose', oneMark()))).toBe('NOT_YOUR_ROLE');
    const session = await store.door.openSession(at.principal.id, new Uint8Array(32).map(() => Math.floor(Math.random() * 256)), new Date(Date.now() + 60_000), null);
    const withSession = () => at.authority.submit(at.part, { request: { operation: randomUUID(), name: 'propose', input: oneMark() }, asker: { person: at.principal.id, session } });
    expect(await withSession()).toMatchObject({ ok: true });
    await store.door.revoke(session, new Date());
    expect(await withSession()).toEqual({ ok: false, signedOut: true });
    expect(code(await ask(at, at.guest, 'propose', oneMark()))).toBe('NOT_YOUR_ROLE');
  });

  it('of adopting and setting aside at once the first in the log stands (guarantee 11)', async () => {
    const at = await house();
    const id = randomUUID();
    await ask(at, at.principal, 'propose', oneMark(id));
    const answers = await Promise.all([ask(at, at.principal, 'setAside', { proposal: id, why: 'No.' }), ask(at, at.principal, 'adopt', { proposal: id, revision: 1, why: 'Yes.' }), ask(at, at.player, 'castVote', { proposal: id, revision: 1, measure: 1, vote: 'for' })]);
    expect(answers.map((answer) => answer?.ok)).toEqual([true, false, false]);
    expect(code(answers[1]!)).toBe('ALREADY_DECIDED');
    expect((await at.authority.current(at.part))!.state.proposals[id]).toMatchObject({ status: 'setAside', votes: {} });
  });

  it('a corrected edition is seen by the next operation', async () => {
    const at = await house();
    await ask(at, at.principal, 'propose', oneMark());
    const content = smallPart('P1', 'Violin I', 9);
    const edition = { bytes: new Uint8Array(1), fileName: 'b.xml', by: at.librarian.id, at: new Date() };
    await store.library.addEdition(at.work, edition, [{ id: at.part, content, measures: null }], []);
    const onNew = { ...oneMark(), from: 9, to: 9, marks: [{ note: 'P1n33', value: { kind: 'finger', finger: 2 } }] };
    expect(await ask(at, at.principal, 'propose', onNew)).toMatchObject({ ok: true, entry: { seq: 2 } });
  });

  it('a part that is not there is answered with null', async () => {
    const at = await house();
    expect(await at.authority.submit('nowhere', { request: { operation: randomUUID(), name: 'lock', input: {} }, asker: { person: at.librarian.id, session: null } })).toBeNull();
    expect(await at.authority.current('nowhere')).toBeNull();
  });
});

describe('a commit whose answer is lost', () => {
  it('is asked for again with the same id, gives the row that was written, and is told to everybody once (guarantees 1 and 2)', async () => {
    const store = await inMemory();
    const laid = await layOut(store);
    const commit = store.log.commit;
    let lost = 0;
    const forgetful: Store = {
      ...store,
      log: {
        ...store.log,
        async commit(...order) {
          const ruling = await commit(...order);
          if (lost++ === 0) throw Object.assign(new Error('Connection terminated unexpectedly'), { code: 'ECONNRESET' });
          return ruling;
        },
      },
    };
    const heard: LogEntry[] = [];
    const authority = createAuthority(forgetful, (_part, entries) => heard.push(...entries));
    const asked = { request: { operation: randomUUID(), name: 'propose', input: oneMark() }, asker: { person: laid.principal.id, session: null } };
    await expect(authority.submit(laid.part, asked)).rejects.toThrow('Connection terminated');
    expect(heard).toEqual([]);
    const answer = await authority.submit(laid.part, asked);
    const { entries, head } = (await store.log.entries(laid.part, 0, 10))!;
    expect(head).toBe(1);
    expect(answer).toEqual({ ok: true, entry: entries[0] });
    expect(heard).toEqual(entries);
  });
});
