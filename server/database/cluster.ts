import { spawn, type ChildProcess } from 'node:child_process';
import { closeSync, mkdirSync, openSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import pg from 'pg';
import { findBinaries } from './binaries.ts';
import { BOOTSTRAP, type Connection } from './connection.ts';
import { createFolder } from './createFolder.ts';
import { stopLeftover } from './leftover.ts';
import { lastWords } from './lastWords.ts';
import { gone } from './processes.ts';
import { chooseRunAs, letThrough, under, type RunAs } from './runAs.ts';
import { SOCKET_PORT, socketFolder } from './socketFolder.ts';
import { Unstartable } from './unstartable.ts';

/** How long it may end again and again before we give up: a child of a killed one may still hold the folder. */
const PATIENCE = 10_000;
/** How long it may run without answering: after a crash it first works through its own log. */
const LONGEST_RECOVERY = 120_000;

export interface ClusterOptions {
  /** Data folder; PostgreSQL's own lies in it as `pg`. The caller holds its lock. */
  folder: string;
  /** Further `name=value` settings. */
  settings?: string[];
  /** Told when PostgreSQL stops by itself and when it is back. */
  report?: (line: string) => void;
}

/** PostgreSQL as a child process: started, watched, started again when it dies, stopped with us. */
export interface Cluster {
  connection(user: string, database: string): Connection;
  /** Process number of the running server. */
  pid(): number | undefined;
  stop(): Promise<void>;
}

export async function startCluster({ folder, settings = [], report = () => {} }: ClusterOptions): Promise<Cluster> {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const home = realpathSync(folder);
  const data = join(home, 'pg');
  const binaries = await findBinaries();
  await stopLeftover(data);
  const runAs = chooseRunAs(binaries.postgres);
  letThrough(home, runAs);
  await createFolder(runAs, binaries.initdb, data);
  const sockets = socketFolder(home, runAs.owner);
  const log = join(home, 'postgresql.log');
  const options = ['listen_addresses=', `unix_socket_directories=${sockets}`, 'unix_socket_permissions=0700', `port=${SOCKET_PORT}`, 'max_connections=60', 'log_timezone=UTC', 'timezone=UTC', ...settings];
  const args = ['-D', data, ...options.flatMap((option) => ['-c', option])];
  const connection = (user: string, database: string): Connection => ({ host: sockets, port: SOCKET_PORT, user, database });

  let child: ChildProcess | undefined;
  let stopping = false;

  async function bringUp(): Promise<void> {
    const end = performance.now() + PATIENCE;
    for (let pause = 100; ; pause = Math.min(pause * 2, 1000)) {
      const started = launch(runAs, binaries.postgres, args, log);
      child = started;
      if (await answers(started, connection(BOOTSTRAP, 'postgres'))) return;
      if (stopping) return;
      if (performance.now() > end) {
        started.kill('SIGQUIT');
        throw new Unstartable(`PostgreSQL does not start on ${data}. Its own words: ${lastWords(log)}`);
      }
      await wait(pause);
    }
  }

  function watch(): void {
    child?.once('exit', () => {
      if (stopping) return;
      report('PostgreSQL has stopped; starting it again.');
      void revive();
    });
    if (child?.exitCode !== null || child.signalCode !== null) child?.emit('exit');
  }

  async function revive(): Promise<void> {
    while (!stopping) {
      try {
        await bringUp();
        if (!stopping) report('PostgreSQL is back.');
        watch();
        return;
      } catch (reason) {
        report((reason as Error).message);
        await wait(1000);
      }
    }
  }

  async function stop(): Promise<void> {
    stopping = true;
    const last = child;
    if (!last?.pid || last.exitCode !== null || last.signalCode !== null) return;
    last.kill('SIGINT');
    if (await gone(last.pid, 8000)) return;
    last.kill('SIGQUIT');
    await gone(last.pid, 4000);
  }

  await bringUp();
  watch();
  return { connection, pid: () => child?.pid, stop };
}

function launch(runAs: RunAs, program: string, options: string[], log: string): ChildProcess {
  const out = openSync(log, 'a', 0o600);
  const { command, args } = under(runAs, program, options);
  // Detached, so that Ctrl-C in the terminal reaches us alone and we stop it when nothing needs it any more.
  const child = spawn(command, args, { ...runAs.ids, detached: true, stdio: ['ignore', out, out], cwd: '/' });
  closeSync(out);
  child.unref();
  return child;
}

/** True when it answers, false when it has ended or has been silent too long. */
async function answers(child: ChildProcess, connection: Connection): Promise<boolean> {
  const end = performance.now() + LONGEST_RECOVERY;
  let ended = false;
  child.once('exit', () => (ended = true));
  child.once('error', () => (ended = true));
  while (!ended && performance.now() < end) {
    const client = new pg.Client({ ...connection, connectionTimeoutMillis: 2000 });
    client.on('error', () => {});
    try {
      await client.connect();
      await client.query('select 1');
      return !ended;
    } catch {
      await wait(30);
    } finally {
      await client.end().catch(() => {});
    }
  }
  return false;
}
