import { createHash } from 'node:crypto';
import { openSync, readFileSync, writeSync } from 'node:fs';
import { canonical } from '../../../../core/agreement/canonical.ts';
import type { Happened } from './happened.ts';

/** Milliseconds of the machine's steady clock: no jump of the wall clock moves it, and every process reads the same. */
export const steady = (): number => Number(process.hrtime.bigint() / 1000n) / 1000;

export type Note = (happened: Happened) => void;

/** Appends to a file, each line whole and at once, so that what was noted before a kill is there after it. */
export function recorder(path: string): Note {
  const file = openSync(path, 'a');
  return (happened) => void writeSync(file, `${JSON.stringify(happened)}\n`);
}

export const readRecord = (path: string): Happened[] =>
  readFileSync(path, 'utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line) as Happened);

/** A state as a short text: equal states have equal ones. */
export const print = (state: unknown): string => createHash('sha256').update(canonical(state)).digest('hex').slice(0, 24);

export const SHORT = 8;
export const short = (id: string): string => id.slice(0, SHORT);
