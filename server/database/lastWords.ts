import { readFileSync } from 'node:fs';

/** The line of PostgreSQL's log that says why it ended. */
export function lastWords(log: string): string {
  const lines = readFileSync(log, 'utf8').slice(-20_000).trimEnd().split('\n');
  return lines.findLast((line) => /FATAL|PANIC|ERROR|error while loading/.test(line)) ?? lines.at(-1) ?? 'none';
}
