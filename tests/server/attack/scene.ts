import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Agent, request as ask, type OutgoingHttpHeaders } from 'node:http';
import { freePort, startServer, type ServerProcess } from '../../support/serverProcess.ts';
import { furnish, type SignedIn } from '../history/library.ts';
import { caller, signIn } from '../history/library.ts';

/** What came back over the wire. */
export interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  bytes: Buffer;
  text: string;
  // eslint-disable-next-line @typescript-eslint/no-explicit-any -- a test reads into whatever came
  json: any;
}

interface Sent {
  method?: string;
  cookie?: string;
  body?: unknown;
  headers?: OutgoingHttpHeaders;
}

/** The real server with a section at its stands. */
export interface Scene {
  server: ServerProcess;
  address: string;
  port: number;
  librarian: SignedIn;
  principal: SignedIn;
  player: SignedIn;
  /** The player whose answers are timed; nobody attacks with their sign-in. */
  bystander: SignedIn;
  section: string;
  programme: string;
  work: string;
  part: string;
  /** Another part of the section. */
  other: string;
  /** Asks without a browser: any method, path and header, a body as it is or as JSON. */
  send(path: string, sent?: Sent): Promise<Answer>;
  /** A person of their own, signed in. */
  newcomer(name: string, librarian?: boolean): Promise<SignedIn>;
  close(): Promise<void>;
}

const jsonOf = (text: string, type: string | undefined): unknown => (type?.startsWith('application/json') ? JSON.parse(text) : undefined);

/** One request as it is written, without what a client library would put right. */
export function send(port: number, agent: Agent | undefined, path: string, { method = 'GET', cookie, body, headers = {} }: Sent = {}): Promise<Answer> {
  const plain = body === undefined || typeof body === 'string' || body instanceof Uint8Array;
  const payload = plain ? (body as string | Uint8Array | undefined) : JSON.stringify(body);
  const own = { ...(cookie ? { cookie } : {}), ...(plain ? {} : { 'content-type': 'application/json' }), ...(payload === undefined ? {} : { 'content-length': Buffer.byteLength(payload) }), ...headers };
  return new Promise((resolve, reject) => {
    const request = ask({ host: '127.0.0.1', port, path, method, agent, headers: own }, (answer) => {
      const chunks: Buffer[] = [];
      answer.on('data', (chunk: Buffer) => chunks.push(chunk));
      answer.once('error', reject);
      answer.once('end', () => {
        const bytes = Buffer.concat(chunks);
        resolve({ status: answer.statusCode!, headers: answer.headers, bytes, text: bytes.toString(), json: jsonOf(bytes.toString(), answer.headers['content-type']) });
      });
    });
    request.once('error', reject);
    request.end(payload);
  });
}

export async function openScene(): Promise<Scene> {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-attack-'));
  const port = await freePort();
  const server = await startServer({ PORT: String(port), BOWLINE_DATA: join(folder, 'data'), TMPDIR: folder });
  const address = `http://127.0.0.1:${port}`;
  const { people, section, views } = await furnish(address, server.link('librarian'));
  const [principal, player, bystander] = people as [SignedIn, SignedIn, SignedIn];
  const librarian = people.at(-1)!;
  const call = caller(address, librarian.cookie);
  const { programmes } = await call<{ programmes: { id: string }[] }>('GET', '/api/shelf');
  const part = views[0]![0]!;
  const agent = new Agent({ keepAlive: true });
  return {
    server, address, port, librarian, principal, player, bystander, section,
    programme: programmes[0]!.id,
    work: part.work.id,
    part: part.id,
    other: views[0]![1]!.id,
    send: (path, sent) => send(port, agent, path, sent),
    async newcomer(name, isLibrarian = false) {
      const { link } = await call<{ link: string }>('POST', '/api/people', { name, librarian: isLibrarian });
      return signIn(address, link);
    },
    async close() {
      agent.destroy();
      server.kill('SIGTERM');
      await server.ended;
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A form with files in it, as a browser writes one. */
export async function formOf(files: readonly [name: string, content: Uint8Array | string][]): Promise<{ body: Buffer; headers: { 'content-type': string } }> {
  const form = new FormData();
  for (const [name, content] of files) form.append('file', new Blob([content as BlobPart]), name);
  const made = new Response(form);
  return { body: Buffer.from(await made.arrayBuffer()), headers: { 'content-type': made.headers.get('content-type')! } };
}
