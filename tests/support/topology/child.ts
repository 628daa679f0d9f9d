import { spawn, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const ROOT = join(import.meta.dirname, '../../..');

/** One process of several: stopped, killed and started again while the others go on. */
export interface Member {
  readonly name: string;
  /** Where it is reached, like http://127.0.0.1:41234; the same after every start. Empty for one that listens nowhere. */
  readonly address: string;
  /** Everything it printed so far, over all its starts. */
  readonly lines: string[];
  readonly running: boolean;
  readonly pid: number | undefined;
  /** Resolves when it is ready. */
  start(): Promise<void>;
  /** kill -9; resolves when it is gone. */
  kill(): Promise<void>;
  /** Asked to end (SIGTERM); resolves with the exit code, or with the signal that ended it. */
  stop(): Promise<number | string>;
  /** Held still (SIGSTOP) as a machine that hangs: its connections stay open and nothing answers. */
  freeze(): void;
  thaw(): void;
}

export interface Recipe {
  name: string;
  address: string;
  command: string;
  args: string[];
  env: Record<string, string>;
  /** Asked again and again until it says yes. */
  ready(lines: readonly string[]): Promise<boolean> | boolean;
}

const LONGEST_START = 120_000;
const alive = new Set<ChildProcess>();
process.on('exit', () => alive.forEach((child) => child.kill('SIGKILL')));

export function createMember({ name, address, command, args, env, ready }: Recipe): Member {
  const lines: string[] = [];
  let child: ChildProcess | undefined;
  let ended: Promise<number | string> = Promise.resolve(0);
  let running = false;

  function begin(): void {
    const { DATABASE_URL: _database, REDIS_URL: _redis, ...inherited } = process.env;
    const started = spawn(command, args, { cwd: ROOT, env: { ...inherited, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    child = started;
    running = true;
    alive.add(started);
    for (const stream of [started.stdout, started.stderr]) createInterface({ input: stream }).on('line', (line) => lines.push(line));
    ended = new Promise((resolve) => {
      const end = (how: number | string) => {
        alive.delete(started);
        if (child === started) running = false;
        resolve(how);
      };
      started.once('error', (reason) => end(reason.message));
      started.once('close', (code, signal) => end(code ?? signal ?? 'unknown'));
    });
  }

  return {
    name,
    address,
    lines,
    get running() {
      return running;
    },
    get pid() {
      return running ? child?.pid : undefined;
    },
    async start() {
      if (running) return;
      begin();
      const before = lines.length;
      const end = performance.now() + LONGEST_START;
      while (!(await ready(lines.slice(before)))) {
        if (!running) throw new Error(`${name} ended with ${await ended} before it was ready:\n${lines.slice(before).join('\n')}`);
        if (performance.now() > end) throw new Error(`${name} was not ready in time:\n${lines.slice(before).join('\n')}`);
        await new Promise((resolve) => setTimeout(resolve, 50));
      }
    },
    async kill() {
      child?.kill('SIGKILL');
      await ended;
    },
    async stop() {
      child?.kill('SIGCONT');
      child?.kill('SIGTERM');
      return ended;
    },
    freeze: () => void child?.kill('SIGSTOP'),
    thaw: () => void child?.kill('SIGCONT'),
  };
}

/** True when something answers 200 there. */
export const answersOk = (address: string): Promise<boolean> => fetch(address, { signal: AbortSignal.timeout(2000) }).then(({ ok }) => ok, () => false);
