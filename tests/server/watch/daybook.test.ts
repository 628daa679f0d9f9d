import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { createDaybook } from '../../../server/watch/daybook.ts';
import { scrub } from '../../../server/watch/scrub.ts';
import { createMeasures } from '../../../server/watch/measures.ts';
import { watchOperations } from '../../../server/watch/watchOperations.ts';
import { watchRequests } from '../../../server/watch/watchRequests.ts';
import { openHouse, tokenOf } from '../../support/house.ts';
import { layOut, oneMark } from '../../support/laidOut.ts';
import { inMemory } from '../../support/oneEnsemble.ts';

type Line = Record<string, unknown> & { msg: string };

/** A house with a daybook and numbers, as main.ts builds it. */
async function watched() {
  const lines: string[] = [];
  const daybook = createDaybook({ level: 'info', person: false, write: (line) => void lines.push(line) });
  const measures = createMeasures();
  const store = await inMemory();
  const house = await openHouse(store, { log: daybook.log }, { watch: (app) => watchRequests(app, measures, daybook) });
  const watch = watchOperations(measures, daybook);
  return { house, store, daybook, measures, lines, watch, told: () => lines.map((line) => JSON.parse(line) as Line) };
}

describe('the daybook', () => {
  it('of a whole run holds none of its secrets: links, cookies, mailboxes, what people wrote, what they sent', async () => {
    const { house, store, lines, told } = await watched();
    const laid = await layOut(store);
    const librarian = await house.signIn(laid.librarian);
    const secrets = ['Rosamund Achterberg', 'rosamund@orchestra.example', 'It sings better on the D string', 'nobody must read this'];
    const { link } = (await librarian.post('/api/people', { name: secrets[0] })).json as { link: string };
    const visitor = house.visitor();
    expect((await visitor.post('/api/sign-in', { token: tokenOf(link) })).status).toBe(200);
    await house.visitor().get(`/sign-in?token=${tokenOf(link)}`);
    await house.visitor().post('/api/sign-in', { token: tokenOf(link) });
    const principal = await house.signIn(laid.principal);
    await principal.put('/api/me/letters', { address: secrets[1], language: 'en' });
    const operation = randomUUID();
    const why = { ...oneMark(), why: secrets[2] };
    const proposed = await principal.post(`/api/parts/${laid.part}/operations/propose`, { operation, input: why });
    expect(proposed, lines.join('')).toMatchObject({ status: 200 });
    await principal.post(`/api/parts/${laid.part}/operations/propose`, { operation: randomUUID(), input: { note: secrets[3] } });
    secrets.push(tokenOf(link), ...[librarian, visitor, principal].map((one) => one.cookie().split('=')[1]!));
    await principal.post('/api/sign-out');
    const text = lines.join('');
    expect(secrets.filter((secret) => secret?.length > 10)).toHaveLength(8);
    expect(secrets.filter((secret) => text.includes(secret))).toEqual([]);
    expect(told().find((line) => line.operation === operation)).toMatchObject({ level: 'info', msg: 'request', method: 'POST', route: '/api/parts/:id/operations/:name', status: 200, request: expect.stringMatching(/^[\w-]{12}$/), time: expect.stringMatching(/^20\d\d-/) });
    await house.close();
  });

  it('names a fault as the reader was told it, with the request, and hides what the message let slip', async () => {
    const { house, store, told } = await watched();
    const laid = await layOut(store);
    const librarian = await house.signIn(laid.librarian);
    const slip = 'cannot reach postgresql://bowline:opensesame@db/x for clara@orchestra.example, token=abc';
    store.sections.all = () => Promise.reject(new Error(slip));
    const reply = await librarian.get('/api/shelf');
    expect(reply.status).toBe(500);
    const line = told().find(({ level }) => level === 'error')!;
    expect(line).toMatchObject({ incident: reply.json.incident, request: reply.headers['x-request-id'], error: expect.stringContaining('cannot reach postgresql://...@db/x for ...@...'), stack: expect.stringContaining('    at ') });
    expect(JSON.stringify(line)).not.toMatch(/opensesame|clara|=abc/);
    await house.close();
  });

  it('leaves out what the database’s client was given, which it repeats when it complains', () => {
    const lines: string[] = [];
    const daybook = createDaybook({ level: 'info', person: false, write: (line) => void lines.push(line) });
    daybook.log('Fault', Object.assign(new Error('Invalid invocation:\n{ data: { name: "Rosamund" } }\n\nUnknown argument.'), { name: 'PrismaClientValidationError' }));
    daybook.log('Thrown things', { body: 'Rosamund' });
    expect(lines.join('')).toContain('Unknown argument.');
    expect(lines.join('')).not.toContain('Rosamund');
  });

  it('is lines with a time for a person, without what went as it should', () => {
    const lines: string[] = [];
    const daybook = createDaybook({ level: 'warn', person: true, write: (line) => void lines.push(line) });
    daybook.event('request', { status: 200 });
    daybook.log('Redis is away.');
    daybook.log('Fault "misty heron 4127"', new Error('broken'));
    expect(lines).toEqual([expect.stringMatching(/^20\d\d-\d\d-\d\dT[\d:.]+Z Redis is away\.\n$/), expect.stringMatching(/^20\S+ Fault "misty heron 4127" Error: broken /)]);
    const silent = createDaybook({ level: 'silent', person: true, write: (line) => void lines.push(line) });
    silent.log('Nothing of this.');
    expect(lines).toHaveLength(2);
  });

  it.each([
    ['redis://:opensesame@cache:6379 is away', 'redis://...@cache:6379 is away'],
    ['GET /sign-in?token=Zm9v', 'GET /sign-in?token=...'],
    ['GET /back?state=a1&code=b2', 'GET /back?state=...&code=...'],
    ['"password":"open sesame"', '"password":"... sesame"'],
    ['a file of 17 pages, part 3f0c0d0e-1111-4222-8333-444455556666', 'a file of 17 pages, part 3f0c0d0e-1111-4222-8333-444455556666'],
    [`hash ${'Az09_-'.repeat(8)}.`, 'hash ....'],
  ])('scrubs %j', (text, clean) => expect(scrub(text)).toBe(clean));
});

describe('the numbers', () => {
  it('count requests by route and status, operations by name and outcome, and name nobody', async () => {
    const { house, store, measures, watch } = await watched();
    const laid = await layOut(store);
    const authority = watch(house.authority, store.ensemble);
    const ask = (name: string, input: unknown) => authority.submit(laid.part, { request: { operation: randomUUID(), name, input }, asker: { person: laid.player.id, session: null } });
    await ask('propose', oneMark());
    await ask('withdraw', { proposal: randomUUID(), why: 'Not there.' });
    await ask(`made-up-${laid.player.id}`, {});
    expect(await authority.submit('nowhere', { request: { operation: randomUUID(), name: 'propose', input: oneMark() }, asker: { person: laid.player.id, session: null } })).toBeNull();
    const player = await house.signIn(laid.player);
    await player.get(`/api/parts/${laid.part}`);
    await player.get('/api/parts/nowhere');
    await player.get(`/no/such/page/${laid.player.id}`);
    const text = await measures.text();
    expect(text).toMatch(/^bowline_operations_total\{name="propose",outcome="written"\} 1$/m);
    expect(text).toMatch(/^bowline_operations_total\{name="propose",outcome="noSuchPart"\} 1$/m);
    expect(text).toMatch(/^bowline_operations_total\{name="withdraw",outcome="refused"\} 1$/m);
    expect(text).toMatch(/^bowline_operations_total\{name="unknown",outcome="refused"\} 1$/m);
    expect(text).toMatch(/^bowline_operations_waiting 0$/m);
    expect(text).toMatch(/^bowline_requests_total\{method="GET",route="\/api\/parts\/:id",status="200"\} 1$/m);
    expect(text).toMatch(/^bowline_requests_total\{method="GET",route="\/api\/parts\/:id",status="404"\} 1$/m);
    expect(text).toMatch(/^bowline_request_seconds_count\{method="GET",route="\/api\/parts\/:id"\} 2$/m);
    expect(text).toContain('nodejs_eventloop_lag_seconds');
    for (const own of [laid.player.id, laid.part, store.ensemble, 'Mona']) expect(text).not.toContain(own);
    await house.close();
  });
});
