import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const ROOT = join(import.meta.dirname, '../..');

export interface House {
  origin: string;
  /** Its data folder. */
  data: string;
  /** role -> one-time address. */
  links: Map<string, string>;
  /** Everything the server printed so far. */
  printed(): string;
  /** The server ends; its database stays. */
  close(): Promise<void>;
  /** The server begins again at the same address. */
  reopen(): Promise<void>;
  stop(): Promise<void>;
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/** The real server as a child process, with a database folder of its own and a free port; with or without the demo in it. `settings`: more of them, by its address. */
export async function openHouse(demo: boolean, settings: (origin: string) => Promise<Record<string, string>> = async () => ({})): Promise<House> {
  const wanted = demo ? ['principal', 'player', 'librarian'] : ['librarian'];
  if (!existsSync(join(ROOT, 'dist/client/index.html'))) throw new Error('The client is not built. Run npm run build first.');
  const folder = mkdtempSync(join(tmpdir(), 'bowline-e2e-'));
  const port = await freePort();
  const more = await settings(`http://127.0.0.1:${port}`);
  const { DATABASE_URL: _own, ...environment } = process.env;
  const lines: string[] = [];
  const links = new Map<string, string>();

  function begin(): { child: ChildProcess; ended: Promise<number | null>; printing: Promise<void> } {
    const child = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts', ...(demo ? ['--demo'] : [])], {
      cwd: ROOT, env: { ...environment, PORT: String(port), HOST: '127.0.0.1', BOWLINE_DATA: join(folder, 'data'), ...more }, stdio: ['ignore', 'pipe', 'pipe'],
    });
    const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
    const printing = new Promise<void>((resolve, reject) => {
      const read = (line: string): void => {
        lines.push(line);
        const link = /^Sign in as (principal|player|librarian) .*: (http\S+)$/.exec(line);
        if (link) links.set(link[1]!, link[2]!);
        if (wanted.every((role) => links.has(role))) resolve();
      };
      createInterface({ input: child.stdout }).on('line', read);
      createInterface({ input: child.stderr }).on('line', (line) => lines.push(line));
      void ended.then((code) => reject(new Error(`The server ended with ${code} before it printed its links:\n${lines.join('\n')}`)));
    });
    return { child, ended, printing };
  }
  let running = begin();
  await running.printing;
  const origin = new URL(links.get('librarian')!).origin;

  async function end(): Promise<number | null> {
    running.child.kill('SIGTERM');
    return running.ended;
  }
  async function reopen(): Promise<void> {
    running = begin();
    const answers = () => fetch(`${origin}/api/health`).then(({ ok }) => ok, () => false);
    while (!(await answers())) await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return {
    origin,
    data: join(folder, 'data'),
    links,
    printed: () => lines.join('\n'),
    async close() {
      await end();
    },
    reopen,
    async stop() {
      const code = await end();
      rmSync(folder, { recursive: true, force: true });
      if (code !== 0) throw new Error(`The server ended with ${code}:\n${lines.join('\n')}`);
    },
  };
}
