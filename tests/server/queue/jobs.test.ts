import { randomBytes, randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Job, type Jobs, type NewJob, PIECE_BYTES, TurnLost } from '../../../server/store/jobs.ts';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import { inMemory, inPostgres, type OneEnsemble } from '../../support/oneEnsemble.ts';
import { layOut, type LaidOut } from '../../support/laidOut.ts';
import { smallPart } from '../../support/smallPart.ts';

let database: TestDatabase;
const KINDS: [string, () => Promise<OneEnsemble>][] = [
  ['memory', inMemory],
  ['PostgreSQL', async () => inPostgres((database = await createTestDatabase()))],
];

async function* flow(...pieces: Uint8Array[]): AsyncIterable<Uint8Array> {
  yield* pieces;
}
const gathered = async (bytes: AsyncIterable<Uint8Array>): Promise<Buffer[]> => {
  const all: Buffer[] = [];
  for await (const piece of bytes) all.push(Buffer.from(piece));
  return all;
};

describe.each(KINDS)('long work in %s', (kept, open) => {
  let store: OneEnsemble;
  let jobs: Jobs;
  let laid: LaidOut;
  beforeAll(async () => {
    store = await open();
    jobs = store.jobs;
    laid = await layOut(store);
  });
  afterAll(async () => {
    await store.close();
    if (kept === 'PostgreSQL') await database.drop();
  });

  const asked = (more: Partial<NewJob> = {}): NewJob => ({ kind: 'import', target: laid.programme, order: { some: 'thing' }, progress: 'none', by: laid.librarian.id, alone: null, uploads: [], at: new Date(), ...more });
  const add = async (more: Partial<NewJob> = {}): Promise<Job> => (await jobs.add(asked(more)))!;
  const stateOf = async (id: string) => (await jobs.job(id))?.state;
  const ending = (job: string, turn: string, outcome: unknown = null) => ({ job, turn, progress: () => 'all', outcome: () => outcome });
  const waitsInLine = async (job: Job): Promise<boolean> => {
    for (let next = await store.installation.queue.take(job.kind); next; next = await store.installation.queue.take(job.kind)) {
      await store.installation.queue.end(next);
      if (next.job === job.id) return true;
    }
    return false;
  };

  it('a file is kept in pieces of a megabyte, whatever pieces it came in, and is given back as it was', async () => {
    const bytes = randomBytes(PIECE_BYTES * 2 + 17);
    const upload = await jobs.keepUpload('long.mxl', flow(bytes.subarray(0, 100), bytes.subarray(100, PIECE_BYTES + 50), bytes.subarray(PIECE_BYTES + 50)));
    const pieces = await gathered(jobs.bytes(upload.id));
    expect(pieces.map(({ length }) => length)).toEqual([PIECE_BYTES, PIECE_BYTES, 17]);
    expect(Buffer.concat(pieces).equals(bytes)).toBe(true);
    await jobs.dropUploads([upload]);
    expect(await gathered(jobs.bytes(upload.id))).toEqual([]);
  });

  it('of a file that breaks off nothing is kept', async () => {
    async function* broken(): AsyncIterable<Uint8Array> {
      yield randomBytes(PIECE_BYTES);
      throw new Error('cut');
    }
    await expect(jobs.keepUpload('cut.mxl', broken())).rejects.toThrow('cut');
  });

  it('is asked for with its files, waits in line, is worked at under a turn, and ends with what it came to', async () => {
    const uploads = [await jobs.keepUpload('b.xml', flow(Buffer.from('b'))), await jobs.keepUpload('a.xml', flow(Buffer.from('a')))];
    const at = new Date('2026-11-26T09:00:00.123Z');
    const { id } = await add({ uploads, at });
    const view = { id, kind: 'import', target: laid.programme, order: { some: 'thing' }, progress: 'none', askers: [laid.librarian.id], uploads, at, stopped: false };
    expect(await jobs.job(id)).toEqual({ ...view, state: 'waiting', outcome: null });
    expect(await jobs.begin(id, 'one')).toEqual({ ...view, state: 'running', outcome: null });
    await jobs.report(id, 'one', { half: true });
    expect(await jobs.job(id)).toMatchObject({ progress: { half: true } });
    expect(await jobs.end(ending(id, 'one', { found: 3 }), 'done')).toBe(true);
    expect(await jobs.job(id)).toEqual({ ...view, state: 'done', progress: 'all', outcome: { found: 3 } });
    expect(await jobs.begin(id, 'two')).toBeNull();
    await jobs.forget(id);
    expect(await jobs.job(id)).toBeNull();
    expect(await gathered(jobs.bytes(uploads[0]!.id))).toEqual([]);
  });

  it('begun anew, it is no more in the hands of whoever had begun it', async () => {
    const { id } = await add();
    await jobs.begin(id, 'dead');
    await jobs.begin(id, 'living');
    await jobs.report(id, 'dead', 'late');
    expect(await jobs.keepMade(id, 'dead', 0, [{ bytes: Buffer.from('late'), mediaType: 'text/plain' }], null)).toBe(false);
    expect(await jobs.end(ending(id, 'dead'), 'done')).toBe(false);
    expect(await jobs.job(id)).toMatchObject({ state: 'running', progress: 'none' });
    expect(await jobs.made(id, 0)).toBeNull();
    expect(await jobs.end(ending(id, 'living'), 'done')).toBe(true);
  });

  it('what it lays on the shelf and its end are one: of two turns only the last lays anything, once', async () => {
    const edition = { bytes: Buffer.from('x'), fileName: 'x.xml', by: laid.librarian.id, at: new Date() };
    const title = `Once ${randomUUID()}`;
    const { id } = await add();
    const lay = (turn: string) => store.library.addWork(laid.programme, { title, composer: '' }, edition, [{ content: smallPart(), section: null }], [], { ...ending(id, turn), outcome: (work: string) => ({ work }) });
    await jobs.begin(id, 'dead');
    await jobs.begin(id, 'living');
    await expect(lay('dead')).rejects.toThrow(TurnLost);
    const work = (await lay('living'))!;
    await expect(lay('living')).rejects.toThrow(TurnLost);
    const all = (await store.library.programmes()).flatMap(({ works }) => works).filter((one) => one.title === title);
    expect(all.map((one) => one.id)).toEqual([work.id]);
    expect(await jobs.job(id)).toMatchObject({ state: 'done', progress: 'all', outcome: { work: work.id } });
  });

  it('further files and corrected editions of a job that was stopped are not laid either', async () => {
    const edition = { bytes: Buffer.from('x'), fileName: 'x.xml', by: laid.librarian.id, at: new Date() };
    const part = (await store.library.part(laid.part))!;
    const { id } = await add();
    await jobs.begin(id, 'one');
    await jobs.stop(id);
    const end = { ...ending(id, 'one'), outcome: (work: string) => work };
    await expect(store.library.addFiles(laid.work, [{ edition, parts: [{ content: smallPart('P9'), section: null }] }], end)).rejects.toThrow(TurnLost);
    await expect(store.library.addEdition(laid.work, edition, [{ id: part.id, content: part.content, measures: null }], [], end)).rejects.toThrow(TurnLost);
    expect((await store.library.work(laid.work))!.parts.map(({ revision }) => revision)).toEqual([1]);
    expect(await jobs.end(ending(id, 'one'), 'stopped')).toBe(true);
  });

  it('stopped while it waits, it has ended and is out of the line; stopped while it is worked at, it is told', async () => {
    const waiting = await add({ kind: 'check' });
    expect(await jobs.stop(waiting.id)).toBe(true);
    expect(await stateOf(waiting.id)).toBe('stopped');
    expect(await waitsInLine(waiting)).toBe(false);
    expect(await jobs.stop(waiting.id)).toBe(false);
    const running = await add({ kind: 'check' });
    await jobs.begin(running.id, 'one');
    await jobs.stop(running.id);
    expect(await jobs.job(running.id)).toMatchObject({ state: 'running', stopped: true });
    // Whoever takes it up after its worker died does not begin it.
    expect(await jobs.begin(running.id, 'two')).toBeNull();
    expect(await stateOf(running.id)).toBe('stopped');
    expect(await jobs.stop(randomUUID())).toBe(false);
  });

  it('two of one name are not under way together, also when they are asked for at once', async () => {
    const alone = `alone ${randomUUID()}`;
    const both = await Promise.all([jobs.add(asked({ alone })), jobs.add(asked({ alone }))]);
    const [first] = both.filter((job) => job !== null);
    expect(both.filter(Boolean)).toHaveLength(1);
    expect(await jobs.add(asked({ alone: `other ${alone}` }))).not.toBeNull();
    await jobs.begin(first!.id, 'one');
    expect(await jobs.add(asked({ alone }))).toBeNull();
    await jobs.end(ending(first!.id, 'one'), 'refused');
    expect(await jobs.add(asked({ alone }))).not.toBeNull();
  });

  it('goes on while anybody waits for it', async () => {
    const { id } = await add();
    expect(await jobs.join(id, laid.player.id)).toBe(true);
    await jobs.leave(id, laid.guest.id);
    await jobs.leave(id, laid.librarian.id);
    expect(await jobs.job(id)).toMatchObject({ state: 'waiting', askers: [laid.player.id] });
    await jobs.leave(id, laid.player.id);
    expect(await stateOf(id)).toBe('stopped');
    expect(await jobs.join(id, laid.player.id)).toBe(false);
  });

  it('keeps what it makes at its place, with what is told of it, and a new turn may make it again', async () => {
    const { id } = await add({ kind: 'print' });
    await jobs.begin(id, 'one');
    const page = (text: string) => ({ bytes: Buffer.from(text), mediaType: 'image/svg+xml' });
    expect(await jobs.keepMade(id, 'one', 2, [page('old')], null)).toBe(true);
    expect(await jobs.keepMade(id, 'one', 2, [page('first'), page('second')], { name: 'Violin I' })).toBe(true);
    expect(await jobs.keepMade(id, 'one', 3, [], { refused: 'too small' })).toBe(true);
    const made = (await jobs.made(id, 2))!;
    expect(made).toMatchObject({ notes: { name: 'Violin I' }, files: [{ mediaType: 'image/svg+xml', size: 5 }, { size: 6 }] });
    expect(Buffer.concat(await gathered(jobs.bytes(made.files[1]!.id))).toString()).toBe('second');
    expect(await jobs.made(id, 3)).toEqual({ notes: { refused: 'too small' }, files: [] });
    expect(await jobs.made(id, 0)).toBeNull();
  });

  it('one that is given up has ended, refused with its reason', async () => {
    const { id } = await add();
    await jobs.begin(id, 'one');
    await jobs.giveUp(id, { why: 'three times' });
    expect(await jobs.job(id)).toMatchObject({ state: 'refused', outcome: { why: 'three times' } });
    await jobs.giveUp(id, { why: 'again' });
    expect(await jobs.job(id)).toMatchObject({ outcome: { why: 'three times' } });
  });

  it('lists those since a moment in the order they came, and those of one target the latest first', async () => {
    const at = new Date('2030-01-01T12:00:00Z');
    const target = randomUUID();
    const [one, two] = [await add({ target, at }), await add({ target, at })];
    const print = await add({ target, at, kind: 'print' });
    expect((await jobs.since('import', at)).map(({ id }) => id)).toEqual([one.id, two.id]);
    expect((await jobs.of('import', target)).map(({ id }) => id)).toEqual([two.id, one.id]);
    expect((await jobs.of('print', target)).map(({ id }) => id)).toEqual([print.id]);
    expect(await jobs.since('import', new Date(at.getTime() + 1))).toEqual([]);
  });

  it('is swept when its time is over, with files nobody came for; what is under way stays', async () => {
    const stray = await jobs.keepUpload('stray.xml', flow(Buffer.from('stray')));
    const [print, found, waiting] = [await add({ kind: 'print' }), await add({ kind: 'check' }), await add()];
    for (const { id } of [print, found]) {
      await jobs.begin(id, 'one');
      await jobs.end(ending(id, 'one'), 'done');
    }
    const hours = (n: number) => new Date(Date.now() + n * 60 * 60 * 1000);
    await jobs.sweep(hours(0.5));
    expect(await stateOf(print.id)).toBe('done');
    await jobs.sweep(hours(3));
    expect(await stateOf(print.id)).toBeUndefined();
    expect(await gathered(jobs.bytes(stray.id))).toEqual([]);
    await jobs.sweep(hours(24 * 8));
    expect(await stateOf(found.id)).toBeUndefined();
    expect(await stateOf(waiting.id)).toBe('waiting');
  });
});
