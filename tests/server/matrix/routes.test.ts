import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createTestDatabase, type TestDatabase } from '../../support/database.ts';
import type { Reply } from '../../support/house.ts';
import { routesOf } from '../../support/routesOf.ts';
import { ACTORS, furnishTwo, patiently, type ActorName, type TwoEnsembles } from './people.ts';
import { ROUTES, type Access, type Row } from './routes.ts';

type Verdict = 'through' | 'SIGNED_OUT' | 'NOT_THERE' | 'LIBRARIAN_ONLY' | 'NOT_FOR_DEPUTIES' | 'not their role';

const FOREIGN: readonly ActorName[] = ['foreignLibrarian', 'foreignPrincipal', 'inBothBound'];
const SHUT_OUT: readonly ActorName[] = [...FOREIGN, 'deputyElsewhere', 'deputyAfterwards'];
const DEPUTIES: readonly ActorName[] = ['deputy', 'deputyElsewhere', 'deputyAfterwards'];
/** Librarian of the ensemble that lies open to them: somebody in two is a player in the one they came to first. */
const KEEPERS: readonly ActorName[] = ['librarian', 'foreignLibrarian', 'inBothBound'];

const LEADERS: readonly ActorName[] = [...KEEPERS, 'principal', 'otherPrincipal', 'foreignPrincipal'];

/** What must come of it, said without looking at the server's own rules. */
function verdict(actor: ActorName, access: Access, row: Row): Verdict {
  if (access === 'anyone') return 'through';
  if (actor === 'signedOut') return 'SIGNED_OUT';
  if (access === 'oneself') return 'through';
  if (access === 'members' || access === 'leaders' || access === 'keeper') {
    if (DEPUTIES.includes(actor)) return 'NOT_FOR_DEPUTIES';
    if (access === 'leaders') return LEADERS.includes(actor) ? 'through' : 'not their role';
    if (access === 'members') return 'through';
    if (!KEEPERS.includes(actor)) return 'LIBRARIAN_ONLY';
    return row.foreignNotThere && FOREIGN.includes(actor) ? 'NOT_THERE' : 'through';
  }
  if (SHUT_OUT.includes(actor) || (row.ofNoProgramme && actor === 'deputy')) return 'NOT_THERE';
  if (access === 'reading' || actor === 'librarian') return 'through';
  if (access === 'keeping') return 'LIBRARIAN_ONLY';
  return actor === 'principal' ? 'through' : 'not their role';
}

function seen({ status, json }: Reply): string {
  const code = (json as { code?: string } | undefined)?.code ?? '';
  if (status === 401) return code;
  if (status === 404 && code === 'NOT_THERE') return code;
  if (status === 403) return ['LIBRARIAN_ONLY', 'NOT_FOR_DEPUTIES', 'NOT_THERE'].includes(code) ? code : 'not their role';
  return status >= 500 ? `fault ${status}` : 'through';
}

describe('every route, for everybody, in their own ensemble and another', () => {
  let database: TestDatabase;
  let at: TwoEnsembles;
  beforeAll(async () => {
    database = await createTestDatabase();
    at = await furnishTwo(database);
  });
  afterAll(async () => {
    await at.close();
    await database.drop();
  });

  it('the table has a row for every route there is, and none that is not', () => {
    const operations = 'post /api/parts/*/operations/*';
    expect(Object.keys(ROUTES).sort()).toEqual(routesOf(at.house.app).filter((route) => route !== operations).sort());
  });

  const cells = Object.entries(ROUTES).flatMap(([route, row]) => ACTORS.map((actor) => ({ route, row, actor, expected: verdict(actor, row.access, row) })));

  it.each(cells)('$route for $actor: $expected', async ({ row, actor, expected }) => {
    const visitor = await at.as(actor);
    const reply = await patiently(() => row.ask(visitor, at));
    // A wrong link or password is refused as such whoever brings it; somebody by a librarian's link changes no way of their own; a look that nobody has made is not kept, also for whoever may ask for it.
    const own = ['LINK_USED', 'NO_MATCH', 'NOT_THE_PASSWORD', 'BY_LINK', 'PROVE_FIRST', 'NOT_LOOKED_THROUGH'].includes((reply.json as { code?: string } | undefined)?.code ?? '');
    const missing = row === ROUTES['delete /api/programmes/*/sections/*/seating'] && expected === 'through';
    expect(own || (missing && reply.status === 404) ? 'through' : seen(reply)).toBe(expected);
  });

  it('what is another ensemble’s looks like what is nowhere', async () => {
    const stranger = await at.as('foreignLibrarian');
    const { laid, set } = at;
    const nowhere = '00000000-0000-4000-8000-000000000000';
    const addresses = [`/api/parts/${laid.part}`, `/api/works/${laid.work}/errata`, `/api/programmes/${laid.programme}/overview`, `/api/works/${laid.work}/check`, `/api/parts/${laid.part}/source`];
    for (const address of addresses) {
      const there = await stranger.get(address);
      const not = await stranger.get(address.replace(/[0-9a-f-]{36}/, nowhere));
      expect([there.status, there.text]).toEqual([not.status, not.text]);
    }
    const bring = (work: string, wanted: string) => stranger.post(`/api/works/${work}/bring-in`, { id: crypto.randomUUID(), set: wanted, ink: false });
    expect((await bring(at.foreign.work, set)).text).toBe((await bring(at.foreign.work, nowhere)).text);
  });

  it('nothing of an ensemble stands in what another’s people are shown', async () => {
    const { laid, house } = at;
    const ours = [laid.part, laid.work, laid.programme, laid.section, laid.librarian.id, laid.principal.id, at.set, house.store.ensemble, 'Varnholm Strings', 'Ada Quill'];
    for (const actor of ['foreignLibrarian', 'foreignPrincipal'] as const) {
      const stranger = await at.as(actor);
      for (const address of ['/api/shelf', '/api/me', '/api/me/waiting', '/api/archive', '/api/imports']) {
        const { text } = await stranger.get(address);
        for (const one of ours) expect(text).not.toContain(one);
      }
    }
  });

  it('a deputy’s shelf has the programmes they play in and no other, until the last day', async () => {
    const titles = async (actor: ActorName) => ((await (await at.as(actor)).get('/api/shelf')).json as { programmes: { title: string }[] }).programmes.map(({ title }) => title);
    expect(await titles('deputy')).toEqual(['Spring']);
    expect(await titles('deputyElsewhere')).toEqual(['Summer']);
    expect(await titles('deputyAfterwards')).toEqual([]);
  });

  it('somebody in two ensembles reaches the things of both, and looks into one at a time', async () => {
    const visitor = await at.as('inBoth');
    expect((await visitor.get(`/api/parts/${at.laid.part}`)).status).toBe(200);
    expect((await visitor.get(`/api/parts/${at.foreign.part}`)).status).toBe(200);
    const me = (await visitor.get('/api/me')).json as { ensembles: { id: string; name: string }[]; librarian: boolean };
    expect(me.ensembles.map(({ name }) => name)).toEqual(['Varnholm Strings', 'Haldane Players']);
    expect((await visitor.put('/api/me/ensemble', { ensemble: me.ensembles[1]!.id })).json).toMatchObject({ ensemble: { name: 'Haldane Players' }, librarian: true });
    expect((await visitor.get('/api/shelf')).text).toContain(at.foreign.work);
  });
});
