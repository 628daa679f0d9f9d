import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { createInterface } from 'node:readline';

const ROOT = join(import.meta.dirname, '../..');

/** A worker as a process of its own. */
export interface WorkerProcess {
  lines: string[];
  /** Resolves with the first line that says this, also if it was said before. */
  says(text: string): Promise<string>;
  /** Resolves with the exit code, or the signal that ended it. */
  ended: Promise<number | string>;
  kill(signal: NodeJS.Signals): void;
}

export async function startWorkerProcess(env: Record<string, string>, script = 'server/worker.ts', ...flags: string[]): Promise<WorkerProcess> {
  const child = spawn(process.execPath, ['--import', 'tsx', script, ...flags], { cwd: ROOT, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
  const lines: string[] = [];
  let stir = (): void => {};
  const hear = (line: string): void => {
    lines.push(line);
    stir();
  };
  createInterface({ input: child.stdout }).on('line', hear);
  createInterface({ input: child.stderr }).on('line', hear);
  const ended = new Promise<number | string>((resolve) => child.once('close', (code, signal) => resolve(code ?? signal ?? 'unknown')));
  const over = ended.then((code) => {
    throw new Error(`The worker ended with ${code}:\n${lines.join('\n')}`);
  });
  over.catch(() => {});
  const worker: WorkerProcess = {
    lines,
    async says(text) {
      for (;;) {
        const said = lines.find((line) => line.includes(text));
        if (said !== undefined) return said;
        await Promise.race([new Promise<void>((resolve) => (stir = resolve)), over]);
      }
    },
    ended,
    kill: (signal) => void child.kill(signal),
  };
  await worker.says('worker ready');
  return worker;
}
