import { randomUUID } from 'node:crypto';
import type { Reply, Visitor } from '../../support/house.ts';
import type { TwoEnsembles } from './people.ts';

/**
 * Who may use a route: `anyone`; `oneself`: about whoever asks, in their own ensemble; `members`: about the ensemble, for its members; `leaders`: for its principals and its librarian; `keeper`: about the
 * ensemble, for its librarian; and about one thing: `reading` for everybody who may open it, `leading` for its section's principal and the librarian,
 * `keeping` for the librarian.
 */
export type Access = 'anyone' | 'oneself' | 'members' | 'leaders' | 'keeper' | 'reading' | 'leading' | 'keeping';

export interface Row {
  access: Access;
  /** Asks for it about the things of the first ensemble. */
  ask(by: Visitor, at: TwoEnsembles): Promise<Reply>;
  /** The id named belongs to no programme, so that a deputy finds nothing there. */
  ofNoProgramme?: true;
  /** The thing asked about is another ensemble's, though the address names none that leads there. */
  foreignNotThere?: true;
}

const seats = ({ laid }: TwoEnsembles) => ({ seats: [{ seat: '1o', person: laid.principal.id }, { seat: '1i', person: laid.player.id }], principal: laid.principal.id });
const programmeSeats = (at: TwoEnsembles) => ({ seats: ['principal', 'player', 'deputy', 'inBoth'].map((actor, index) => ({ seat: ['1o', '1i', '2o', '2i'][index], person: at.idOf(actor as 'principal') })), principal: at.laid.principal.id });
const part = (path: string) => (by: Visitor, { laid }: TwoEnsembles) => by.get(`/api/parts/${laid.part}${path}`);
const work = (path: string) => (by: Visitor, { laid }: TwoEnsembles) => by.get(`/api/works/${laid.work}${path}`);
const programme = { title: 'Spring', season: '', conductor: '', days: [], deadlines: {} };

async function anImport(at: TwoEnsembles): Promise<string> {
  const librarian = await at.as('librarian');
  return ((await librarian.begin(`/api/programmes/${at.laid.programme}/works`, { 'reed.musicxml': 'Violin I:4' })).json as { id: string }).id;
}

async function anInvitation(at: TwoEnsembles): Promise<string> {
  const librarian = await at.as('librarian');
  await librarian.post('/api/people', { name: 'Tora Uhl' });
  return ((await librarian.get('/api/invitations')).json as { invitations: { id: string }[] }).invitations[0]!.id;
}

/** Somebody who was in the first ensemble for a moment; `gone`: and has left it. */
async function somebody({ house, laid }: TwoEnsembles, gone: boolean): Promise<string> {
  const { people } = house.store;
  const { id } = await people.add('Tora Uhl', false);
  if (gone) await people.leave(id, laid.librarian);
  return id;
}

/** Every route there is, by its method and place; a test holds this table against the app's own list. */
export const ROUTES: Record<string, Row> = {
  'get /api/health': { access: 'anyone', ask: (by) => by.get('/api/health') },
  'get /api/ready': { access: 'anyone', ask: (by) => by.get('/api/ready') },
  'get /api/openapi.json': { access: 'anyone', ask: (by) => by.get('/api/openapi.json') },
  'get /api/archive.schema.json': { access: 'anyone', ask: (by) => by.get('/api/archive.schema.json') },
  'post /api/sign-in': { access: 'anyone', ask: (by) => by.post('/api/sign-in', { token: 'x'.repeat(43) }) },
  'get /api/sign-in': { access: 'anyone', ask: (by) => by.get('/api/sign-in') },
  'post /api/sign-in/password': { access: 'anyone', ask: (by) => by.post('/api/sign-in/password', { address: `${randomUUID()}@varnholm.example`, password: 'anything' }) },
  'post /api/sign-in/letter': { access: 'anyone', ask: (by) => by.post('/api/sign-in/letter', { address: 'ada@varnholm.example' }) },
  'post /api/sign-in/identity': { access: 'anyone', ask: (by) => by.post('/api/sign-in/identity', {}) },
  'get /api/sign-in/identity/back': { access: 'anyone', ask: (by) => by.get('/api/sign-in/identity/back?code=c&state=s') },
  'post /api/sign-out': { access: 'anyone', ask: (by) => by.post('/api/sign-out') },

  'get /api/me': { access: 'oneself', ask: (by) => by.get('/api/me') },
  'put /api/me/ensemble': { access: 'oneself', ask: async (by) => by.put('/api/me/ensemble', { ensemble: (await by.get('/api/me')).json?.ensemble?.id ?? 'none' }) },
  'post /api/me/invitations': { access: 'oneself', ask: (by) => by.post('/api/me/invitations', { token: 'x'.repeat(43) }) },
  'get /api/me/sign-in': { access: 'oneself', ask: (by) => by.get('/api/me/sign-in') },
  'post /api/me/proof': { access: 'oneself', ask: (by) => by.post('/api/me/proof', { password: 'anything' }) },
  'put /api/me/address': { access: 'oneself', ask: (by) => by.put('/api/me/address', { address: `${randomUUID()}@varnholm.example`, language: 'en' }) },
  'post /api/me/address/confirm': { access: 'oneself', ask: (by) => by.post('/api/me/address/confirm', { token: 'x'.repeat(43) }) },
  'put /api/me/password': { access: 'oneself', ask: (by) => by.put('/api/me/password', { password: 'short' }) },
  'post /api/me/identity': { access: 'oneself', ask: (by) => by.post('/api/me/identity', {}) },
  'delete /api/me/identity': { access: 'oneself', ask: (by) => by.remove('/api/me/identity') },
  'delete /api/me/sessions': { access: 'oneself', ask: (by) => by.remove('/api/me/sessions') },
  'delete /api/me/sessions/*': { access: 'oneself', ask: async (by) => by.remove(`/api/me/sessions/${(await by.get('/api/me/sign-in')).json?.sessions?.[0]?.id ?? 'none'}`) },
  'get /api/me/hand': { access: 'oneself', ask: (by) => by.get('/api/me/hand') },
  'put /api/me/hand': { access: 'oneself', ask: (by) => by.put('/api/me/hand', { factor: 0.9, shortFourth: true }) },
  'delete /api/me/hand': { access: 'oneself', ask: (by) => by.remove('/api/me/hand') },
  'get /api/me/waiting': { access: 'oneself', ask: (by) => by.get('/api/me/waiting') },
  'get /api/me/letters': { access: 'oneself', ask: (by) => by.get('/api/me/letters') },
  'put /api/me/letters': { access: 'oneself', ask: (by) => by.put('/api/me/letters', { address: 'ada@varnholm.example', language: 'en' }) },
  'delete /api/me/letters': { access: 'oneself', ask: (by) => by.remove('/api/me/letters') },
  'get /api/shelf': { access: 'oneself', ask: (by) => by.get('/api/shelf') },

  'get /api/me/kept': { access: 'oneself', ask: (by) => by.get('/api/me/kept') },
  'post /api/me/erase': { access: 'oneself', ask: (by) => by.post('/api/me/erase', { name: 'Somebody Else' }) },

  'get /api/trail': { access: 'leaders', ask: (by) => by.get('/api/trail') },
  'put /api/ensemble': { access: 'keeper', ask: (by) => by.put('/api/ensemble', { name: 'Varnholm Strings' }) },
  'get /api/people/gone': { access: 'keeper', ask: (by) => by.get('/api/people/gone') },
  'put /api/people/*/standing': { access: 'keeper', foreignNotThere: true, ask: (by, { laid }) => by.put(`/api/people/${laid.guest.id}/standing`, { librarian: false, deputy: false }) },
  'delete /api/people/*': { access: 'keeper', foreignNotThere: true, ask: async (by, at) => by.remove(`/api/people/${await somebody(at, false)}`) },
  'delete /api/people/*/sessions': { access: 'keeper', foreignNotThere: true, ask: async (by, at) => by.remove(`/api/people/${await somebody(at, false)}/sessions`) },
  'post /api/people/*/back': { access: 'keeper', foreignNotThere: true, ask: async (by, at) => by.post(`/api/people/${await somebody(at, true)}/back`, { librarian: false, deputy: false }) },
  'post /api/people/*/erase': { access: 'keeper', foreignNotThere: true, ask: async (by, at) => by.post(`/api/people/${await somebody(at, true)}/erase`, { name: 'Somebody Else' }) },

  'get /api/archive': { access: 'members', ask: (by) => by.get('/api/archive') },
  'get /api/archive/export': { access: 'keeper', ask: (by) => by.get('/api/archive/export') },
  'post /api/archive': { access: 'keeper', ask: (by) => by.upload('/api/archive', 'no zip', 'archive.zip') },
  'get /api/imports': { access: 'keeper', ask: (by) => by.get('/api/imports') },
  'get /api/imports/*': { access: 'keeping', ofNoProgramme: true, ask: async (by, at) => by.get(`/api/imports/${await anImport(at)}`) },
  'delete /api/imports/*': { access: 'keeping', ofNoProgramme: true, ask: async (by, at) => by.remove(`/api/imports/${await anImport(at)}`) },
  'post /api/people': { access: 'keeper', ask: (by) => by.post('/api/people', { name: 'Tora Uhl' }) },
  'post /api/people/*/link': { access: 'keeper', foreignNotThere: true, ask: (by, { laid }) => by.post(`/api/people/${laid.guest.id}/link`) },
  'get /api/invitations': { access: 'keeper', ask: (by) => by.get('/api/invitations') },
  'delete /api/invitations/*': { access: 'keeper', foreignNotThere: true, ask: async (by, at) => by.remove(`/api/invitations/${await anInvitation(at)}`) },
  'post /api/sections': { access: 'keeper', ask: (by) => by.post('/api/sections', { name: `Cellos ${randomUUID()}`, instrument: 'cello' }) },
  'post /api/programmes': { access: 'keeper', ask: (by) => by.post('/api/programmes', { ...programme, title: 'Autumn' }) },

  'get /api/programmes/*/overview': { access: 'reading', ask: (by, { laid }) => by.get(`/api/programmes/${laid.programme}/overview`) },
  'put /api/programmes/*': { access: 'keeping', ask: (by, { laid }) => by.put(`/api/programmes/${laid.programme}`, programme) },
  'put /api/programmes/*/sections/*/seating': { access: 'keeping', ask: (by, at) => by.put(`/api/programmes/${at.laid.programme}/sections/${at.laid.section}/seating`, programmeSeats(at)) },
  'delete /api/programmes/*/sections/*/seating': { access: 'keeping', ask: async (by, at) => by.remove(`/api/programmes/${at.laid.programme}/sections/${randomUUID()}/seating`) },
  'post /api/programmes/*/works': { access: 'keeping', ask: (by, { laid }) => by.upload(`/api/programmes/${laid.programme}/works`, 'Violin I:4') },

  'post /api/works/*/editions': { access: 'keeping', ask: (by, { laid }) => by.upload(`/api/works/${laid.work}/editions`, 'broken') },
  'post /api/works/*/files': { access: 'keeping', ask: (by, { laid }) => by.upload(`/api/works/${laid.work}/files`, 'broken') },
  'get /api/works/*/check': { access: 'reading', ask: work('/check') },
  'post /api/works/*/check': { access: 'reading', ask: (by, { laid }) => by.post(`/api/works/${laid.work}/check`) },
  'delete /api/works/*/check': { access: 'reading', ask: (by, { laid }) => by.remove(`/api/works/${laid.work}/check`) },
  'get /api/works/*/check/parts/*': { access: 'reading', ask: (by, { laid }) => by.get(`/api/works/${laid.work}/check/parts/${laid.part}`) },
  'post /api/works/*/prints': { access: 'leading', ask: (by, { laid }) => by.post(`/api/works/${laid.work}/prints`, { copies: [{ part: laid.part, for: ['section'] }] }) },
  'post /api/works/*/keep': { access: 'keeping', ask: (by, { laid }) => by.post(`/api/works/${laid.work}/keep`, { ensemble: 'Varnholm Strings', conductor: '', season: '' }) },
  'get /api/works/*/offers': { access: 'reading', ask: work('/offers') },
  'post /api/works/*/bring-in': { access: 'reading', ask: (by, { laid, set }) => by.post(`/api/works/${laid.work}/bring-in`, { id: randomUUID(), set, ink: false }) },
  'get /api/works/*/travel': { access: 'reading', ask: (by, { laid }) => by.get(`/api/works/${laid.work}/travel?from=${laid.part}`) },
  'post /api/works/*/travel': { access: 'reading', ask: (by, { laid }) => by.post(`/api/works/${laid.work}/travel`, { id: randomUUID(), from: laid.part, keys: ['none'] }) },
  'get /api/works/*/errata': { access: 'reading', ask: work('/errata') },

  'get /api/parts/*': { access: 'reading', ask: part('') },
  'put /api/parts/*/section': { access: 'keeping', ask: (by, { laid }) => by.put(`/api/parts/${laid.part}/section`, { section: laid.section }) },
  'put /api/parts/*/seen': { access: 'reading', ask: (by, { laid }) => by.put(`/api/parts/${laid.part}/seen`, { seq: 0 }) },
  'get /api/parts/*/log': { access: 'reading', ask: part('/log') },
  'get /api/parts/*/since': { access: 'reading', ask: part('/since') },
  'get /api/parts/*/engraving': { access: 'reading', ask: part('/engraving') },
  'get /api/parts/*/carried': { access: 'reading', ask: part('/carried') },
  'post /api/parts/*/carried': { access: 'leading', ask: (by, { laid }) => by.post(`/api/parts/${laid.part}/carried`, { revision: 1, key: 'k', how: 'put' }) },
  'get /api/parts/*/carried/engraving': { access: 'reading', ask: part('/carried/engraving') },
  'get /api/parts/*/source': { access: 'reading', ask: part('/source') },
  'get /api/parts/*/export': { access: 'leading', ask: part('/export') },
  'get /api/parts/*/print': { access: 'leading', ask: part('/print') },
  'get /api/parts/*/changes': { access: 'leading', ask: part('/changes') },
  'get /api/parts/*/revisions': { access: 'reading', ask: part('/revisions') },
  'get /api/parts/*/revisions/*': { access: 'reading', ask: part('/revisions/0') },
  'get /api/parts/*/difference': { access: 'reading', ask: part('/difference?from=0&to=0') },
  'get /api/parts/*/erasures': { access: 'reading', ask: part('/erasures') },
  'post /api/parts/*/errata': { access: 'reading', ask: (by, { laid }) => by.post(`/api/parts/${laid.part}/errata`, { measure: 1, says: 'a', should: 'b' }) },
  'put /api/errata/*/settled': { access: 'keeping', ask: async (by, at) => by.put(`/api/errata/${await at.erratum()}/settled`, { settled: true }) },

  'put /api/sections/*/seating': { access: 'keeping', ofNoProgramme: true, ask: (by, at) => by.put(`/api/sections/${at.laid.section}/seating`, seats(at)) },
  'put /api/sections/*/settings': { access: 'leading', ofNoProgramme: true, ask: (by, { laid }) => by.put(`/api/sections/${laid.section}/settings`, {}) },
};
