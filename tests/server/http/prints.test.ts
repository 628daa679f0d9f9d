import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PrintOrder } from '../../../server/print/order.ts';
import { zipDirectory } from '../../../server/files/zipDirectory.ts';
import { unpack } from '../../../server/files/unpack.ts';
import { fakeDocuments } from '../../support/fakeDocuments.ts';
import { openHouse, type House, type Visitor } from '../../support/house.ts';
import { layOut, oneMark, type LaidOut } from '../../support/laidOut.ts';
import { inMemory, type OneEnsemble } from '../../support/oneEnsemble.ts';

let store: OneEnsemble, house: House, laid: LaidOut;
let librarian: Visitor, principal: Visitor, player: Visitor;
/** Prints that go on until the test lets them end. */
let held: { order: PrintOrder; end(): void }[] | null;

beforeEach(async () => {
  store = await inMemory();
  laid = await layOut(store);
  held = null;
  house = await openHouse(store, {
    documents: {
      ...fakeDocuments,
      async printPart(order) {
        if (held) await new Promise<void>((end) => held!.push({ order, end }));
        return fakeDocuments.printPart(order);
      },
    },
  });
  [librarian, principal, player] = await Promise.all([house.signIn(laid.librarian), house.signIn(laid.principal), house.signIn(laid.player)]);
});
afterEach(() => house.close());

const zipped = async (visitor: Visitor, body: unknown, work = laid.work) => visitor.post(`/api/works/${work}/prints`, body);

async function entriesOf(bytes: Buffer): Promise<Record<string, string>> {
  return Object.fromEntries((await zipDirectory(bytes)).map((entry) => [entry.name, unpack(bytes, entry).toString('utf8')]));
}

/** The zip as bytes: the visitor's text would spoil it. */
async function zipOf(person: { id: string }, body: unknown): Promise<Buffer> {
  const cookie = (await house.signIn(person)).cookie();
  const reply = await house.app.inject({ method: 'POST', url: `/api/works/${laid.work}/prints`, headers: { host: 'localhost', origin: 'http://localhost', cookie, 'content-type': 'application/json' }, payload: JSON.stringify(body) });
  expect(reply.statusCode).toBe(200);
  expect(reply.headers['content-type']).toBe('application/zip');
  return reply.rawPayload;
}

describe('a printed part', () => {
  it('comes as it is asked for, under its name', async () => {
    const reply = await librarian.get(`/api/parts/${laid.part}/print?for=2i&paper=b4&margins=wide&staff=8&fingerings=sparse`);
    expect(reply.status).toBe(200);
    expect(reply.headers['content-type']).toBe('application/pdf');
    expect(reply.headers['content-disposition']).toContain('Spring - Violin I - Desk 2, inside.pdf');
    expect(JSON.parse(reply.text)).toMatchObject({ paper: 'b4', margins: 'wide', staff: 8, fingerings: 'sparse', heading: { title: 'Spring', composer: 'T. Holmwood', seat: 'Desk 2, inside' } });
  });

  it('is on A4 with staves of 7.5 mm, all figures, for the section, where nothing else is said', async () => {
    expect(JSON.parse((await principal.get(`/api/parts/${laid.part}/print`)).text)).toMatchObject({ paper: 'a4', margins: 'usual', staff: 7.5, fingerings: 'all', heading: { seat: '' } });
  });

  it('is clean where no marks are asked for, and says so in its name', async () => {
    const reply = await librarian.get(`/api/parts/${laid.part}/print?for=1&marks=none`);
    expect(reply.headers['content-disposition']).toContain('Spring - Violin I - Desk 1 - clean.pdf');
    expect(JSON.parse(reply.text)).toMatchObject({ marks: [] });
  });

  it('names the day of the last marks of the log, though the clock was a week ahead when earlier ones were inked', async () => {
    vi.useFakeTimers({ toFake: ['Date'], now: new Date('2027-02-10T10:00:00Z') });
    try {
      const ink = async () => {
        const slip = oneMark();
        await principal.post(`/api/parts/${laid.part}/operations/propose`, { operation: crypto.randomUUID(), input: slip });
        const adopted = await principal.post(`/api/parts/${laid.part}/operations/adopt`, { operation: crypto.randomUUID(), input: { proposal: slip.id, revision: 1, why: 'Agreed.' } });
        expect(adopted.status).toBe(200);
      };
      [librarian, principal] = await Promise.all([house.signIn(laid.librarian), house.signIn(laid.principal)]);
      await ink();
      vi.setSystemTime(new Date('2027-02-03T10:00:00Z'));
      await ink();
      const { heading } = JSON.parse((await librarian.get(`/api/parts/${laid.part}/print`)).text) as PrintOrder;
      expect(heading.edition).toBe('Edition 1, marks of 3 February 2027, printed 3 February 2027');
    } finally {
      vi.useRealTimers();
    }
  });

  it('of several SVG pages is a zip', async () => {
    const cookie = librarian.cookie();
    const reply = await house.app.inject({ method: 'GET', url: `/api/parts/${laid.part}/print?form=svg`, headers: { host: 'localhost', cookie } });
    expect(Object.keys(await entriesOf(reply.rawPayload))).toEqual(['Spring - Violin I - 1.svg', 'Spring - Violin I - 2.svg']);
  });

  it('with staves too small is refused in a sentence', async () => {
    const reply = await librarian.get(`/api/parts/${laid.part}/print?staff=6`);
    expect([reply.status, reply.json.code]).toEqual([422, 'STAFF_TOO_SMALL']);
  });

  it.each(['for=9', 'for=4o', 'for=3i'])('%s: nobody sits there', async (asked) => expect((await librarian.get(`/api/parts/${laid.part}/print?${asked}`)).json.code).toBe('NO_SUCH_SEAT'));
  it.each(['for=x', 'paper=a5', 'margins=none', 'marks=some', 'form=doc', 'staff=big', 'fingerings=some'])('%s is not known', async (asked) => expect((await librarian.get(`/api/parts/${laid.part}/print?${asked}`)).status).toBe(400));

  it('is given out by the librarian and the principal only', async () => {
    expect((await player.get(`/api/parts/${laid.part}/print`)).json.code).toBe('NOT_YOUR_EXPORT');
    expect((await zipped(player, { copies: [{ part: laid.part, for: ['section'] }] })).json.code).toBe('NOT_YOUR_EXPORT');
    expect((await house.visitor().get(`/api/parts/${laid.part}/print`)).status).toBe(401);
  });
});

describe('several prints at once', () => {
  it('are a zip with one file for every part and reader', async () => {
    const files = await entriesOf(await zipOf(laid.librarian, { copies: [{ part: laid.part, for: ['section', '1', '2i'] }] }));
    expect(Object.keys(files)).toEqual(['Spring - Violin I.pdf', 'Spring - Violin I - Desk 1.pdf', 'Spring - Violin I - Desk 2, inside.pdf']);
  });

  it('are files of the source\'s own kind where that is asked for', async () => {
    const files = await entriesOf(await zipOf(laid.librarian, { copies: [{ part: laid.part, for: ['section', '1o'] }], form: 'musicxml' }));
    expect(Object.keys(files)).toEqual(['Spring - Violin I.musicxml', 'Spring - Violin I - Desk 1, outside.musicxml']);
  });

  it('say in the zip what could not be printed, and why', async () => {
    const files = await entriesOf(await zipOf(laid.librarian, { copies: [{ part: laid.part, for: ['section'] }], staff: 6 }));
    expect(files).toEqual({ 'Not printed.txt': 'Spring - Violin I: Too small for two players.\n' });
  });

  it('of a work that is not there, or a part of another work, are not begun', async () => {
    expect((await zipped(librarian, { copies: [{ part: laid.part, for: ['section'] }] }, 'nowhere')).status).toBe(404);
    expect((await zipped(librarian, { copies: [{ part: 'nowhere', for: ['section'] }] })).status).toBe(404);
  });

  it('wait for each other: one a person, while others print', async () => {
    held = [];
    const first = librarian.get(`/api/parts/${laid.part}/print`);
    await expect.poll(() => held!.length).toBe(1);
    expect((await librarian.get(`/api/parts/${laid.part}/print`)).json.code).toBe('PRINTING');
    const other = principal.get(`/api/parts/${laid.part}/print`);
    await expect.poll(() => held!.length).toBe(2);
    held.forEach(({ end }) => end());
    expect((await first).status).toBe(200);
    expect((await other).status).toBe(200);
    held = null;
    expect((await librarian.get(`/api/parts/${laid.part}/print`)).status).toBe(200);
  });
});
