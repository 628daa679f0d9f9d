import { spawn, type ChildProcess } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const ROOT = join(import.meta.dirname, '../..');

/** The real server as a process of its own. */
export interface ServerProcess {
  pid: number;
  lines: string[];
  /** Address of the nth sign-in link it printed. */
  link(role: string): string;
  /** Resolves with the exit code, or the signal that ended it. */
  ended: Promise<number | string>;
  kill(signal: NodeJS.Signals): void;
}

export async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

/** Starts it; `ready` resolves when it says that it runs, or rejects with what it said when it ended before. */
export function launch(env: Record<string, string>, flags: string[] = []): { server: ServerProcess; ready: Promise<void> } {
  const { DATABASE_URL: _own, ...inherited } = process.env;
  const child: ChildProcess = spawn(process.execPath, ['--import', 'tsx', 'server/main.ts', ...flags], { cwd: ROOT, env: { ...inherited, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
  const lines: string[] = [];
  const ended = new Promise<number | string>((resolve) => child.once('close', (code, signal) => resolve(code ?? signal ?? 'unknown')));
  const ready = new Promise<void>((resolve, reject) => {
    createInterface({ input: child.stdout! }).on('line', (line) => {
      lines.push(line);
      if (line.endsWith('Ctrl-C stops Bowline.')) resolve();
    });
    createInterface({ input: child.stderr! }).on('line', (line) => lines.push(line));
    void ended.then((code) => reject(new Error(`The server ended with ${code}:\n${lines.join('\n')}`)));
  });
  ready.catch(() => {});
  const server: ServerProcess = {
    pid: child.pid!,
    lines,
    ended,
    link: (role) => /(http\S+)$/.exec(lines.findLast((line) => line.startsWith(`Sign in as ${role} `)) ?? '')?.[1] ?? '',
    kill: (signal) => void child.kill(signal),
  };
  return { server, ready };
}

export async function startServer(env: Record<string, string>, flags: string[] = []): Promise<ServerProcess> {
  const { server, ready } = launch(env, flags);
  await ready;
  return server;
}

/** Number of the PostgreSQL process that serves a data folder. */
export const postgresOf = (data: string): number => Number(readFileSync(join(data, 'pg/postmaster.pid'), 'utf8').split('\n')[0]);
