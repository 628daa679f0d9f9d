import type { FastifyInstance } from 'fastify';
import { buildApp, type ProcessOptions } from '../../server/app.ts';
import type { Deps } from '../../server/http/deps.ts';
import { hashOf, inDays, makeSignInLink, newToken } from '../../server/http/tokens.ts';
import { lookThrough } from '../../server/jobs/lookThrough.ts';
import { createHalls, type Hall } from '../../server/halls.ts';
import { createAuthority, type Authority } from '../../server/operations/authority.ts';
import { createNotices } from '../../server/operations/notices.ts';
import { startWorker } from '../../server/queue/worker.ts';
import { fakeDocuments } from './fakeDocuments.ts';
import type { OneEnsemble } from './oneEnsemble.ts';

export interface Reply {
  status: number;
  headers: Record<string, unknown>;
  text: string;
  raw: Buffer;
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- a test reads into whatever came
  json: any;
}

/** Somebody at a browser: keeps their cookie, sends the origin a page of ours would. */
export interface Visitor {
  get(path: string, headers?: Record<string, string>): Promise<Reply>;
  post(path: string, body?: unknown, headers?: Record<string, string>): Promise<Reply>;
  put(path: string, body: unknown): Promise<Reply>;
  remove(path: string): Promise<Reply>;
  upload(path: string, content: string | Uint8Array, fileName?: string): Promise<Reply>;
  /** Several files in one form, by name, without waiting for what they come to. */
  begin(path: string, files: Record<string, string>): Promise<Reply>;
  cookie(): string;
}

export interface House {
  app: FastifyInstance;
  deps: Deps;
  /** Of the one ensemble that the house was opened with. */
  store: OneEnsemble;
  authority: Authority;
  lines: string[];
  /** `cookie`: of a session that is there already. */
  visitor(cookie?: string): Visitor;
  /** Signed in by a session of their own. */
  signIn(person: { id: string }): Promise<Visitor>;
  close(): Promise<void>;
}

export async function openHouse(store: OneEnsemble, more: Partial<Deps> = {}, options: ProcessOptions = {}): Promise<House> {
  const lines: string[] = [];
  const log = (line: string, context?: unknown) => lines.push(`${line} ${context instanceof Error ? context.message : ''}`);
  const { door, ensemble } = store;
  const notices = createNotices();
  const authority = createAuthority(store, notices.logged);
  const others = createHalls(store.installation, notices.logged);
  const hall = (id: string): Hall => (id === ensemble ? { ensemble, store, authority } : others(id));
  const deps: Deps = { door, attempts: store.installation.attempts, post: null, identity: null, address: () => 'http://localhost', hall, ping: () => store.installation.ping(), notices, queue: store.installation.queue, documents: fakeDocuments, lookThrough, now: () => new Date(), origin: null, requestsPerMinute: 100_000, letters: null, log, ...more };
  const app = await buildApp(deps, options);
  await app.ready();
  const worker = startWorker(deps, { atOnce: 1 });
  const visitor = (cookie = ''): Visitor => visit(app, cookie);
  return {
    app,
    deps,
    store,
    authority,
    lines,
    visitor,
    async signIn(person) {
      const token = newToken();
      await door.openSession(person.id, hashOf(token), inDays(new Date(), 1), null);
      return visitor(`bowline=${token}`);
    },
    async close() {
      await app.close();
      await worker.drain(0);
    },
  };
}

export const linkFor = (house: House, person: { id: string }): Promise<string> => makeSignInLink(house.deps.door, 'http://localhost', person.id, house.store.ensemble, new Date());
export const tokenOf = (link: string): string => new URL(link).searchParams.get('token')!;

function visit(app: FastifyInstance, start: string): Visitor {
  const jar = new Map(start ? [start.split('=') as [string, string]] : []);
  const kept = () => [...jar].map(([name, value]) => `${name}=${value}`).join('; ');
  async function send(method: 'GET' | 'POST' | 'PUT' | 'DELETE', url: string, payload: Buffer | string | undefined, headers: Record<string, string>): Promise<Reply> {
    const origin = method === 'GET' ? {} : { origin: 'http://localhost' };
    const reply = await app.inject({ method, url, ...(payload === undefined ? {} : { payload }), headers: { host: 'localhost', cookie: kept(), ...origin, ...headers } });
    const set = reply.headers['set-cookie'];
    for (const one of set === undefined ? [] : [set].flat()) {
      const [name = '', value = ''] = String(one).split(';')[0]!.split('=');
      if (value) jar.set(name, value);
      else jar.delete(name);
    }
    const json: unknown = String(reply.headers['content-type']).startsWith('application/json') ? reply.json() : undefined;
    return { status: reply.statusCode, headers: reply.headers, text: reply.body, raw: reply.rawPayload, json };
  }
  async function sendFiles(path: string, files: [string, string | Uint8Array][], headers: Record<string, string>): Promise<Reply> {
    const form = new FormData();
    for (const [name, content] of files) form.append('file', new Blob([content as BlobPart]), name);
    const made = new Response(form);
    return send('POST', path, Buffer.from(await made.arrayBuffer()), { 'content-type': made.headers.get('content-type')!, ...headers });
  }
  return {
    get: (path, headers = {}) => send('GET', path, undefined, headers),
    post: (path, body, headers = {}) => send('POST', path, body === undefined ? undefined : JSON.stringify(body), { ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...headers }),
    put: (path, body) => send('PUT', path, JSON.stringify(body), { 'content-type': 'application/json' }),
    remove: (path) => send('DELETE', path, undefined, {}),
    upload: (path, content, fileName = 'harbour.musicxml') => sendFiles(path, [[fileName, content]], {}),
    begin: (path, files) => sendFiles(path, Object.entries(files), { prefer: 'respond-async' }),
    cookie: kept,
  };
}
