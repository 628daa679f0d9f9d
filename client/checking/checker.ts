import type { SectionPassage } from '../../core/bowing/sectionBows.ts';
import type { CheckInput, Finding } from '../../core/check/finding.ts';
import type { Part } from '../../core/music/part.ts';
import type { FromChecker, ToChecker } from './messages.ts';
import { toSend, type NamedSection } from './othersSent.ts';

type Input = Omit<CheckInput, 'part'>;
type Answer = Exclude<FromChecker, { kind: 'whys' | 'failed' }>;

export interface Checker {
  /** Everything the rules find; rejects when the checker stops. */
  check(input: Input): Promise<Finding[]>;
  /** Who bows when in every staggered passage. */
  picture(input: Input): Promise<SectionPassage[]>;
  /** The other sections of the work, for what is found from now on. */
  beside(others: readonly NamedSection[]): void;
  /** Why a rule exists, in a sentence. */
  why(rule: string): string;
  close(): void;
}

/** The checker in a worker of its own, so that typing never waits for it. */
export function checker(part: Part): Checker {
  const worker = new Worker(new URL('./check.worker.ts', import.meta.url), { type: 'module' });
  const asked = new Map<number, { resolve(answer: Answer): void; reject(fault: Error): void }>();
  let whys: Record<string, string> = {};
  let job = 0;
  let sent: readonly NamedSection[] = [];
  const post = (message: ToChecker) => worker.postMessage(message);
  const ask = (kind: 'check' | 'picture', input: Input) => {
    job += 1;
    const mine = job;
    return new Promise<Answer>((resolve, reject) => {
      asked.set(mine, { resolve, reject });
      post({ kind, job: mine, input });
    });
  };

  worker.onmessage = ({ data }: MessageEvent<FromChecker>) => {
    if (data.kind === 'whys') {
      whys = data.whys;
      return;
    }
    const question = asked.get(data.job);
    asked.delete(data.job);
    if (data.kind === 'failed') question?.reject(new Error(data.why));
    else question?.resolve(data);
  };
  worker.onerror = (event) => {
    for (const { reject } of asked.values()) reject(new Error(event.message));
    asked.clear();
  };
  post({ kind: 'part', part });

  return {
    check: async (input) => {
      const answer = await ask('check', input);
      return answer.kind === 'found' ? answer.findings : [];
    },
    picture: async (input) => {
      const answer = await ask('picture', input);
      return answer.kind === 'drawn' ? answer.passages : [];
    },
    beside: (others) => {
      post({ kind: 'others', others: toSend(sent, others) });
      sent = others;
    },
    why: (rule) => whys[rule] ?? '',
    close: () => worker.terminate(),
  };
}
