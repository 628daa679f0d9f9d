import { fork, type ChildProcess } from 'node:child_process';
import { join } from 'node:path';

/** A program of this folder as a process of its own that answers what it is asked, one question after another. */
export interface Child {
  pid: number;
  ask<Answer>(question: unknown): Promise<Answer>;
  stop(): Promise<void>;
}

export function startChild(program: string, env: Record<string, string> = {}): Child {
  const child: ChildProcess = fork(join(import.meta.dirname, program), { execArgv: ['--import', 'tsx', '--expose-gc'], env: { ...process.env, ...env } });
  const ended = new Promise<void>((resolve) => child.once('exit', () => resolve()));
  return {
    pid: child.pid!,
    ask: <Answer>(question: unknown) =>
      new Promise<Answer>((resolve, reject) => {
        const gone = () => reject(new Error(`${program} ended before it answered.`));
        child.once('exit', gone);
        child.once('message', (answer) => {
          child.off('exit', gone);
          resolve(answer as Answer);
        });
        child.send(question as object);
      }),
    async stop() {
      child.kill('SIGKILL');
      await ended;
    },
  };
}

/** The other side: what this process answers. */
export function answering<Question>(answer: (question: Question) => Promise<unknown>): void {
  process.on('message', (question: Question) => {
    answer(question).then(
      (said) => process.send!(said ?? {}),
      (reason: unknown) => {
        console.error(reason);
        process.exit(1);
      },
    );
  });
  process.on('disconnect', () => process.exit());
}

/** Milliseconds since 1970 as every process of this machine has them, with their fractions. */
export const clock = (): number => performance.timeOrigin + performance.now();

/** Bytes of main memory this process holds once everything it can give back is given back. */
export async function heldBytes(): Promise<number> {
  for (let round = 0; round < 3; round += 1) {
    (globalThis as unknown as { gc(): void }).gc();
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
}
