import { readFileSync } from 'node:fs';

const EVERY_MS = 200;

export interface Memory {
  first: number;
  last: number;
  peak: number;
  /** The most in each quarter of the time: what grows without bound rises through them. */
  quarters: number[];
}

/** Megabytes of main memory that a process holds, from its own account with the system. */
const heldBy = (pid: number): number => Math.round(Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024);

export function watchMemory(pid: number): { now: () => number; stop: () => Memory } {
  const seen = [heldBy(pid)];
  const timer = setInterval(() => seen.push(heldBy(pid)), EVERY_MS);
  return {
    now: () => seen.at(-1)!,
    stop() {
      clearInterval(timer);
      const quarter = Math.ceil(seen.length / 4);
      return { first: seen[0]!, last: seen.at(-1)!, peak: Math.max(...seen), quarters: [0, 1, 2, 3].map((n) => Math.max(0, ...seen.slice(n * quarter, (n + 1) * quarter))) };
    },
  };
}
