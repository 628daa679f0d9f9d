import { z } from 'zod';
import { describeHttp, type Described } from '../../core/agreement/describe.ts';
import { AssignPart, EnsembleBody, EraseBody, HandBody, LettersBody, LookIntoBody, NewPerson, NewSection, Seating, SeenBody, SettleBody, StandingBody } from '../../core/agreement/wire/http.ts';
import { AddressBody, ConfirmBody, IdentityWanted, LetterWanted, PasswordBody, PasswordSignIn, ProofBody, SignInBody, TakeUpBody } from '../../core/agreement/wire/signIn.ts';
import { TRAIL_KINDS } from '../../core/agreement/wire/trail.ts';
import { NewErratumBody } from '../../core/archive/erratum.ts';
import { BringInBody, KeepBody, TravelBody } from '../../core/archive/wire.ts';
import { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import { CopyMarks } from '../../core/print/copy.ts';
import { Fingerings } from '../../core/print/fingerings.ts';
import { MarginsName } from '../../core/print/margins.ts';
import { PaperName } from '../../core/print/paper.ts';
import { PrintsAsked } from './prints/copyOf.ts';

interface Route {
  method: 'get' | 'post' | 'put' | 'delete';
  path: string;
  summary: string;
  body?: z.ZodType | 'file';
  query?: Record<string, string[]>;
  /** Media type of the answer where it is not JSON. */
  answers?: string;
}

const MUSICXML = 'application/vnd.recordare.musicxml+xml';

/** Every route but the operations, which come from their registry. A test holds this list against the routes there are. */
const ROUTES: Route[] = [
  { method: 'get', path: '/api/health', summary: 'Whether the server lives.' },
  { method: 'get', path: '/api/ready', summary: 'Whether the library can be used now: it reaches its shelves and is not about to stop.' },
  { method: 'get', path: '/api/openapi.json', summary: 'This description.' },
  { method: 'post', path: '/api/sign-in', summary: 'Signs in with the token of a one-time link.', body: SignInBody },
  { method: 'get', path: '/api/sign-in', summary: 'By which ways one can sign in here, beside a link.' },
  { method: 'post', path: '/api/sign-in/password', summary: 'Signs in with an e-mail address and a password.', body: PasswordSignIn },
  { method: 'post', path: '/api/sign-in/letter', summary: 'Has a link sent to an e-mail address, where it is known; the answer is the same where it is not.', body: LetterWanted },
  { method: 'post', path: '/api/sign-in/identity', summary: 'Begins at the orchestra’s own sign-in (OpenID Connect): answers where the browser goes. With an invitation, that is accepted on the way back.', body: IdentityWanted },
  { method: 'get', path: '/api/sign-in/identity/back', summary: 'Where the browser comes back to from the orchestra’s own sign-in.', query: { code: [], state: [], iss: [] }, answers: 'text/html' },
  { method: 'post', path: '/api/sign-out', summary: 'Ends this sign-in and its live connections.' },
  { method: 'get', path: '/api/me', summary: 'Who is signed in, and where they sit.' },
  { method: 'get', path: '/api/me/hand', summary: 'Your own hand, which nobody else can read; null where you have told nothing.' },
  { method: 'put', path: '/api/me/ensemble', summary: 'Lays another of my ensembles open.', body: LookIntoBody },
  { method: 'post', path: '/api/me/invitations', summary: 'Takes up an invitation as the one who is signed in: the ensemble is among theirs from then on.', body: TakeUpBody },
  { method: 'put', path: '/api/me/hand', summary: 'Keeps your own hand, for you alone.', body: HandBody },
  { method: 'delete', path: '/api/me/hand', summary: 'Forgets your hand.' },
  { method: 'get', path: '/api/me/sign-in', summary: 'How you sign in, and where you are signed in.' },
  { method: 'post', path: '/api/me/proof', summary: 'Proves by the present password that it is you; for ten minutes you may change how you sign in.', body: ProofBody },
  { method: 'put', path: '/api/me/address', summary: 'The e-mail address you sign in with, confirmed by a letter where letters are sent; null forgets it and the password.', body: AddressBody },
  { method: 'post', path: '/api/me/address/confirm', summary: 'Confirms an address by the token in the letter.', body: ConfirmBody },
  { method: 'put', path: '/api/me/password', summary: 'Sets your password, or does away with it; every other sign-in of yours ends.', body: PasswordBody },
  { method: 'post', path: '/api/me/identity', summary: 'Lets the orchestra’s own sign-in know you: answers where the browser goes.' },
  { method: 'delete', path: '/api/me/identity', summary: 'The orchestra’s own sign-in no longer brings you in.' },
  { method: 'delete', path: '/api/me/sessions/{session}', summary: 'Ends a sign-in of yours and its live connections.' },
  { method: 'delete', path: '/api/me/sessions', summary: 'Ends every sign-in of yours but this one.' },
  { method: 'get', path: '/api/me/waiting', summary: 'What waits for you over all parts of your sections: votes, talk that names you, your slips, decisions since you were there.' },
  { method: 'get', path: '/api/me/letters', summary: 'Whether letters are sent here, and where yours go; nobody else can read it.' },
  { method: 'put', path: '/api/me/letters', summary: 'Has letters about what waits sent to an address, for you alone.', body: LettersBody },
  { method: 'delete', path: '/api/me/letters', summary: 'Forgets the address; no more letters.' },
  { method: 'get', path: '/api/shelf', summary: 'Programmes with their works and parts, the sections, and for the librarian the people.' },
  { method: 'post', path: '/api/programmes', summary: 'Adds a programme: title, season, conductor, days, deadlines.', body: ProgrammeBody },
  { method: 'put', path: '/api/programmes/{programme}', summary: 'Writes a programme anew; its works and seatings stay.', body: ProgrammeBody },
  { method: 'get', path: '/api/programmes/{programme}/overview', summary: 'What is due of every part of the programme, how late it is, and who is waited for.' },
  { method: 'put', path: '/api/programmes/{programme}/sections/{section}/seating', summary: 'Who sits where in this programme, deputies too, and who leads.', body: Seating },
  { method: 'delete', path: '/api/programmes/{programme}/sections/{section}/seating', summary: 'The section sits as usual in this programme.' },
  { method: 'post', path: '/api/programmes/{programme}/works', summary: 'Imports a score (.musicxml, .xml, .mxl, .mei), or the files of one work: all of their string parts, or nothing and why. With Prefer: respond-async it answers 202 and goes on in the background.', body: 'file' },
  { method: 'post', path: '/api/works/{work}/editions', summary: 'Lays a corrected file over a work; marks stay where the music is the same.', body: 'file' },
  { method: 'post', path: '/api/works/{work}/files', summary: 'Adds the parts in further files to a work.', body: 'file' },
  { method: 'get', path: '/api/imports', summary: 'Imports under way and those of the last day: how far each file is, and what it came to.' },
  { method: 'get', path: '/api/imports/{import}', summary: 'One import.' },
  { method: 'delete', path: '/api/imports/{import}', summary: 'Stops an import, and nothing of it is kept; or forgets one that has ended.' },
  { method: 'get', path: '/api/works/{work}/check', summary: 'How far a look through the whole piece has come, and what the last one found, part by part.' },
  { method: 'post', path: '/api/works/{work}/check', summary: 'Looks through the whole piece in the background, or joins those who wait for it.' },
  { method: 'delete', path: '/api/works/{work}/check', summary: 'Waits no more for it; it is stopped when nobody else does.' },
  { method: 'get', path: '/api/works/{work}/check/parts/{part}', summary: 'What was found in one part of the piece, worst first.' },
  { method: 'put', path: '/api/parts/{part}/section', summary: 'Puts a part on the stands of a section, or takes it off.', body: AssignPart },
  { method: 'get', path: '/api/parts/{part}', summary: 'A part: its music, its section, and what has been agreed.' },
  { method: 'put', path: '/api/parts/{part}/seen', summary: 'How far you have read the part: what came before waits no longer.', body: SeenBody },
  { method: 'get', path: '/api/parts/{part}/log', summary: 'Rows of the log after a place in it.', query: { after: [] } },
  { method: 'get', path: '/api/parts/{part}/since', summary: 'What has changed since the part went onto the stands, by measure and seat.' },
  { method: 'get', path: '/api/parts/{part}/engraving', summary: 'The part as MusicXML for the engraver, notes carrying their ids.', answers: MUSICXML },
  { method: 'get', path: '/api/parts/{part}/carried', summary: 'What changed when a corrected file was laid over the part: both versions of each place, and the marks that did not go along, with why.', query: { revision: [] } },
  { method: 'post', path: '/api/parts/{part}/carried', summary: 'Says that such a mark was put on a note of the new edition, or left out; null opens it again.', body: SettleBody },
  { method: 'get', path: '/api/parts/{part}/carried/engraving', summary: 'The part as it was before, as MusicXML for the engraver.', query: { revision: [] }, answers: MUSICXML },
  { method: 'get', path: '/api/parts/{part}/source', summary: 'The document as it was uploaded, byte for byte.', answers: 'application/octet-stream' },
  { method: 'get', path: '/api/parts/{part}/export', summary: 'The source document with the marks in force merged in, for the section or one seat.', query: { for: [], form: ['musicxml', 'mxl'] }, answers: MUSICXML },
  { method: 'get', path: '/api/parts/{part}/print', summary: 'The part with its marks on pages, for the section, a desk ("3") or a seat ("3i"); SVG of several pages as a zip.', query: { for: [], form: ['pdf', 'svg', 'mei'], marks: CopyMarks.options, paper: PaperName.options, margins: MarginsName.options, staff: [], fingerings: Fingerings.options }, answers: 'application/pdf' },
  { method: 'post', path: '/api/works/{work}/prints', summary: 'Several parts, each for several readers, as a zip; what cannot be printed is said in it.', body: PrintsAsked, answers: 'application/zip' },
  { method: 'get', path: '/api/parts/{part}/changes', summary: 'What was inked in: measure, what, who, when, why.', query: { form: ['csv', 'text'] }, answers: 'text/csv' },
  { method: 'get', path: '/api/parts/{part}/revisions', summary: 'The states of a part worth going back to: ink changed, a stage was reached.' },
  { method: 'get', path: '/api/parts/{part}/revisions/{seq}', summary: 'The marks that stood after a row of the log.' },
  { method: 'get', path: '/api/parts/{part}/difference', summary: 'What differs between the marks after two rows of the log, by measure and seat.', query: { from: [], to: [] } },
  { method: 'get', path: '/api/parts/{part}/erasures', summary: 'What has to be erased from hired material, by measure and desk.', answers: 'text/csv' },
  { method: 'get', path: '/api/archive', summary: 'The sets of marks that were put by: work, edition, ensemble, conductor, season.' },
  { method: 'post', path: '/api/archive', summary: 'Takes in an archive that was exported, all of it or nothing; sets that are here already stay.', body: 'file' },
  { method: 'get', path: '/api/archive/export', summary: 'The whole archive as a zip of MusicXML and JSON.', answers: 'application/zip' },
  { method: 'get', path: '/api/archive.schema.json', summary: 'What a set.json of the archive may hold.', answers: 'application/schema+json' },
  { method: 'post', path: '/api/works/{work}/keep', summary: 'Puts the marks of a work by, under an ensemble, a conductor and a season.', body: KeepBody },
  { method: 'get', path: '/api/works/{work}/offers', summary: 'Sets of earlier seasons that fit the work by heading or by music.' },
  { method: 'post', path: '/api/works/{work}/bring-in', summary: 'Lays the marks of an earlier season on the parts, as slips or inked in at once.', body: BringInBody },
  { method: 'get', path: '/api/works/{work}/travel', summary: 'Passages of the other parts that play what one part plays, and could be bowed alike.', query: { from: [] } },
  { method: 'post', path: '/api/works/{work}/travel', summary: 'Lays the bows of chosen passages as slips with their source.', body: TravelBody },
  { method: 'get', path: '/api/works/{work}/errata', summary: 'Wrong notes of the editions, apart from all bowings.', query: { form: ['json', 'csv'] } },
  { method: 'post', path: '/api/parts/{part}/errata', summary: 'Writes down a wrong note: what the edition says and what it should say.', body: NewErratumBody },
  { method: 'put', path: '/api/errata/{erratum}/settled', summary: 'Says that a wrong note was put right in the edition, or was not after all.' },
  { method: 'post', path: '/api/people', summary: 'Adds a person and invites them: by letter, or by a link to hand out.', body: NewPerson },
  { method: 'get', path: '/api/invitations', summary: 'Open invitations: to whom, until when.' },
  { method: 'delete', path: '/api/invitations/{invitation}', summary: 'Withdraws an open invitation; its link opens nothing.' },
  { method: 'get', path: '/api/me/kept', summary: 'What is kept about you, as JSON in a zip.', answers: 'application/zip' },
  { method: 'post', path: '/api/me/erase', summary: 'Erases you: your name becomes "Former player", what hangs on you alone is gone; marks and votes stay.', body: EraseBody },
  { method: 'post', path: '/api/people/{person}/erase', summary: 'Erases somebody who has left the ensemble.', body: EraseBody },
  { method: 'get', path: '/api/people/gone', summary: 'Who has left the ensemble.' },
  { method: 'put', path: '/api/people/{person}/standing', summary: 'Gives or takes the librarian’s work; makes a deputy a member or a member a deputy.', body: StandingBody },
  { method: 'delete', path: '/api/people/{person}', summary: 'Somebody leaves the ensemble: their seats are free and they reach nothing more; what they did keeps their name.', query: { myself: [] } },
  { method: 'post', path: '/api/people/{person}/back', summary: 'Somebody who had left is here again, as themselves.', body: StandingBody },
  { method: 'put', path: '/api/ensemble', summary: 'Gives the ensemble that lies open another name.', body: EnsembleBody },
  { method: 'get', path: '/api/trail', summary: 'What was done in the ensemble, the last first: all of it for the librarian, what is about their section and its people for a principal.', query: { person: [], kind: [...TRAIL_KINDS], before: [] } },
  { method: 'delete', path: '/api/people/{person}/sessions', summary: 'Ends somebody’s sign-ins: those by links of this ensemble, and by ways of their own where they belong to it alone. Their links are void.' },
  { method: 'post', path: '/api/people/{person}/link', summary: 'Makes a new sign-in link for a person.' },
  { method: 'post', path: '/api/sections', summary: 'Adds a section.', body: NewSection },
  { method: 'put', path: '/api/sections/{section}/seating', summary: 'Who sits where, and who leads.', body: Seating },
  { method: 'put', path: '/api/sections/{section}/settings', summary: 'The numbers the checker goes by in this section.', body: z.record(z.string(), z.json()) },
];

const TROUBLE: Described = {
  type: 'object',
  description: 'Why it was not done, in words for the reader. Codes are permanent; a fault of the server carries an incident name.',
  required: ['code', 'text'],
  properties: { code: { type: 'string' }, text: { type: 'string' }, line: { type: 'integer' }, part: { type: 'string' }, measure: { type: 'string' }, element: { type: 'string' }, incident: { type: 'string' } },
};

export function describe(): Described {
  const paths: Record<string, Described> = {};
  for (const route of ROUTES) paths[route.path] = { ...paths[route.path], [route.method]: operation(route) };
  return describeHttp({ paths, schemas: { Trouble: TROUBLE } });
}

function operation({ path, summary, body, query = {}, answers = 'application/json' }: Route): Described {
  const named = [...path.matchAll(/\{(\w+)\}/g)].map(([, name]) => ({ name, in: 'path', required: true, schema: { type: 'string' } }));
  const asked = Object.entries(query).map(([name, values]) => ({ name, in: 'query', schema: values.length ? { type: 'string', enum: values } : { type: 'string' } }));
  return {
    summary,
    parameters: [...named, ...asked],
    ...(body ? { requestBody: { required: true, content: contentOf(body) } } : {}),
    responses: {
      200: { description: 'Done.', content: { [answers]: {} } },
      default: { description: 'Not done.', content: { 'application/json': { schema: { $ref: '#/components/schemas/Trouble' } } } },
    },
  };
}

function contentOf(body: z.ZodType | 'file'): Described {
  if (body === 'file') return { 'multipart/form-data': { schema: { type: 'object', required: ['file'], properties: { file: { type: 'string', format: 'binary' } } } } };
  const { $schema: _, ...schema } = z.toJSONSchema(body, { io: 'input' });
  return { 'application/json': { schema } };
}
