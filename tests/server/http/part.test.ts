import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { replay } from '../../../core/agreement/replay.ts';
import { PROTOCOL } from '../../../core/agreement/wire/socket.ts';
import { openLaidHouse, type LaidHouse } from '../../support/laidHouse.ts';
import { type House, type Visitor } from '../../support/house.ts';
import { oneMark, type LaidOut } from '../../support/laidOut.ts';

let opened: LaidHouse;
let house: House;
let laid: LaidOut;
let people: Record<'librarian' | 'principal' | 'player' | 'guest', Visitor>;
beforeAll(async () => {
  opened = await openLaidHouse();
  ({ house, laid } = opened);
  people = { librarian: await house.signIn(laid.librarian), principal: await house.signIn(laid.principal), player: await house.signIn(laid.player), guest: await house.signIn(laid.guest) };
});
afterAll(() => opened.close());

const at = (path: string) => `/api/parts/${laid.part}${path}`;
const ask = (visitor: Visitor, name: string, input: unknown, operation: string = randomUUID(), more: object = {}) => visitor.post(at(`/operations/${name}`), { operation, input, ...more });

describe('one part, over HTTP', () => {
  it('each reader is told their roles and seat, and the same music and state', async () => {
    const views = await Promise.all(Object.values(people).map(async (visitor) => (await visitor.get(at(''))).json));
    expect(views.map(({ roles, seat }) => [roles, seat])).toEqual([[['librarian'], null], [['principal'], '1o'], [['player'], '1i'], [[], null]]);
    for (const view of views) expect(view).toMatchObject({ id: laid.part, head: 0, work: { title: 'Spring' }, state: views[0].state, part: views[0].part, section: { id: laid.section } });
  });

  it('proposing, voting and inking in come back as rows of the log; refusals say who may', async () => {
    const id = randomUUID();
    const operation = randomUUID();
    const first = await ask(people.principal, 'propose', oneMark(id), operation);
    expect(first).toMatchObject({ status: 200, json: { ok: true, entry: { seq: 1, operation, name: 'propose', by: laid.principal.id, byName: laid.principal.name } } });
    expect((await ask(people.principal, 'propose', oneMark(id), operation)).json).toEqual(first.json);
    expect((await ask(people.player, 'castVote', { proposal: id, revision: 1, measure: 1, vote: 'for' })).json.ok).toBe(true);
    expect(await ask(people.player, 'adopt', { proposal: id, revision: 1, why: 'Mine.' })).toMatchObject({ status: 403, json: { ok: false, code: 'NOT_YOUR_ROLE', refusal: { code: 'NOT_YOUR_ROLE' }, text: expect.stringContaining('principal') } });
    expect(await ask(people.guest, 'propose', oneMark())).toMatchObject({ status: 403 });
    expect(await ask(people.principal, 'adopt', { proposal: id, revision: 1, why: 'Agreed.' })).toMatchObject({ status: 200 });
    expect(await ask(people.principal, 'setAside', { proposal: id, why: 'No.' })).toMatchObject({ status: 409, json: { code: 'ALREADY_DECIDED' } });
    expect(await ask(people.principal, 'propose', { ...oneMark(), marks: [] })).toMatchObject({ status: 422, json: { code: 'BAD_INPUT' } });
    const { head, entries } = (await people.guest.get(at('/log?after=1'))).json;
    expect([head, entries.map((entry: { name: string }) => entry.name)]).toEqual([3, ['castVote', 'adopt']]);
    const view = (await people.guest.get(at(''))).json;
    expect(view.state).toEqual(replay((await people.guest.get(at('/log'))).json.entries));
  });

  it('a page of another age is told to load again, and nothing is written (guarantee 10)', async () => {
    const before = (await people.guest.get(at('/log'))).json.head;
    expect(await ask(people.principal, 'propose', oneMark(), randomUUID(), { protocol: PROTOCOL - 1 })).toMatchObject({ status: 426, json: { code: 'OLD_PROGRAM' } });
    expect((await people.guest.get(at('/log'))).json.head).toBe(before);
    expect(await ask(people.principal, 'propose', oneMark(), randomUUID(), { protocol: PROTOCOL })).toMatchObject({ status: 200 });
  });

  it('an operation that is not one, an id that is none, a part that is not there: each has its answer', async () => {
    expect((await ask(people.principal, 'burn', {})).status).toBe(404);
    expect((await ask(people.principal, 'constructor', {})).status).toBe(404);
    expect((await ask(people.principal, 'lock', {}, 'no-uuid')).json).toMatchObject({ code: 'BAD_INPUT' });
    expect((await people.librarian.post('/api/parts/nowhere/operations/lock', { operation: randomUUID(), input: {} })).status).toBe(404);
    expect((await people.guest.get(at('/log?after=-1'))).status).toBe(400);
    expect((await people.guest.get('/api/parts/nowhere/log')).status).toBe(404);
  });

  it('the engraver’s text is made once and not sent again to who has it', async () => {
    const first = await people.guest.get(at('/engraving'));
    expect(first).toMatchObject({ status: 200, text: '<score-partwise>P1 4</score-partwise>' });
    expect(first.headers['content-type']).toContain('application/vnd.recordare.musicxml+xml');
    expect((await people.guest.get(at('/engraving'), { 'if-none-match': String(first.headers.etag) })).status).toBe(304);
  });
});

describe('the librarian and the principal give out marked parts', () => {
  const exported = async (visitor: Visitor, query: string) => JSON.parse((await visitor.get(at(`/export${query}`))).text);

  it('the section’s copy has what everybody plays, a seat’s copy its own marks over it', async () => {
    const narrow = { ...oneMark(), seats: ['1i'], marks: [{ note: 'P1n1', value: { kind: 'finger', finger: 4 } }] };
    await ask(people.principal, 'propose', narrow);
    await ask(people.principal, 'adopt', { proposal: narrow.id, revision: 1, why: 'For desk one.' });
    const finger = (marks: { note: string; value: unknown }[]) => marks.filter(({ note }) => note === 'P1n1').map(({ value }) => value);
    const section = await exported(people.librarian, '?for=section');
    expect(section).toMatchObject({ source: '<score/>', superseded: 'hide' });
    expect(finger(section.marks)).toEqual([{ kind: 'finger', finger: 1 }]);
    expect(finger((await exported(people.principal, '?for=1i')).marks)).toEqual([{ kind: 'finger', finger: 4 }]);
    expect(finger((await exported(people.principal, '?for=2o&form=mxl')).marks)).toEqual([{ kind: 'finger', finger: 1 }]);
    const reply = await people.librarian.get(at('/export?for=1i&form=mxl'));
    expect(reply.headers['content-type']).toBe('application/vnd.recordare.musicxml');
    expect(String(reply.headers['content-disposition'])).toContain('Spring - Violin I - 1i.mxl');
  });

  it('others are told whom to ask; an unknown seat or form is named', async () => {
    expect((await people.player.get(at('/export'))).json).toMatchObject({ code: 'NOT_YOUR_EXPORT' });
    expect((await people.guest.get(at('/changes'))).status).toBe(403);
    expect((await people.principal.get(at('/export?for=9o'))).json).toMatchObject({ code: 'NO_SUCH_SEAT' });
    expect((await people.principal.get(at('/export?form=pdf'))).status).toBe(400);
    expect((await people.principal.get('/api/parts/nowhere/export')).status).toBe(404);
  });

  it('the change list says measure, printed number, note, what, seats, who, when and why', async () => {
    const csv = (await people.librarian.get(at('/changes?form=csv'))).text;
    expect(csv.startsWith('\ufeffmeasure,printed number,note,what,seats,who,when,why,standing\r\n')).toBe(true);
    expect(csv).toContain(`\r\n1,0,A4,finger 4,1i,${laid.principal.name},`);
    const text = (await people.librarian.get(at('/changes?form=text'))).text;
    expect(text).toMatch(/^Spring - Violin I\n=+\nm\. 0: It speaks better\. \(Ilya Brandt, \d{4}-\d\d-\d\d \d\d:\d\d UTC\)\n {2}m\. 0: A4 finger 1/);
    expect(text.split('\n').filter((line) => line.length > 78)).toEqual([]);
  });

  it('no text of a player becomes a formula in a spreadsheet', async () => {
    for (const why of ['=HYPERLINK("http://evil.example")', '+1', '-1', '@SUM(A1)', '\t=1']) {
      const input = { ...oneMark(), why, marks: [{ note: 'P1n2', value: { kind: 'text', text: '=2+2' } }] };
      await ask(people.principal, 'propose', input);
      await ask(people.principal, 'adopt', { proposal: input.id, revision: 1, why: 'x' });
    }
    const csv = (await people.librarian.get(at('/changes'))).text.slice(1);
    const cells = csv.split('\r\n').flatMap((line) => line.match(/("([^"]|"")*"|[^,]*)(,|$)/g) ?? []).map((cell) => cell.replace(/^"/, ''));
    expect(cells.filter((cell) => /^[=+\-@\t]/.test(cell))).toEqual([]);
    expect(csv).toContain('HYPERLINK');
  });
});
