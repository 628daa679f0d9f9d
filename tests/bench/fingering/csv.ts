import { readFileSync } from 'node:fs';

/** Rows of a plain CSV without quotes, as objects of column name to text. */
export function csvRows(path: string): Record<string, string>[] {
  const [head, ...lines] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  const names = head!.split(',');
  return lines.map((line) => Object.fromEntries(line.split(',').map((value, i) => [names[i]!, value])));
}
