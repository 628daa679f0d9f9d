import type { CheckInput, Finding } from '../../core/check/finding.ts';
import type { Part } from '../../core/music/part.ts';
import type { FromChecker, ToChecker } from './messages.ts';

export interface Checker {
  /** Everything the rules find; rejects when the checker stops. */
  check(input: Omit<CheckInput, 'part'>): Promise<Finding[]>;
  /** Why a rule exists, in a sentence. */
  why(rule: string): string;
  close(): void;
}

/** The checker in a worker of its own, so that typing never waits for it. */
export function checker(part: Part): Checker {
  const worker = new Worker(new URL('./check.worker.ts', import.meta.url), { type: 'module' });
  const asked = new Map<number, { resolve(findings: Finding[]): void; reject(fault: Error): void }>();
  let whys: Record<string, string> = {};
  let job = 0;
  const post = (message: ToChecker) => worker.postMessage(message);

  worker.onmessage = ({ data }: MessageEvent<FromChecker>) => {
    if (data.kind === 'whys') {
      whys = data.whys;
      return;
    }
    const question = asked.get(data.job);
    asked.delete(data.job);
    if (data.kind === 'found') question?.resolve(data.findings);
    else question?.reject(new Error(data.why));
  };
  worker.onerror = (event) => {
    for (const { reject } of asked.values()) reject(new Error(event.message));
    asked.clear();
  };
  post({ kind: 'part', part });

  return {
    check(input) {
      job += 1;
      const mine = job;
      return new Promise((resolve, reject) => {
        asked.set(mine, { resolve, reject });
        post({ kind: 'check', job: mine, input });
      });
    },
    why: (rule) => whys[rule] ?? '',
    close: () => worker.terminate(),
  };
}
