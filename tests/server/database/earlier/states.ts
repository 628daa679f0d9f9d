import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliCompressSync, brotliDecompressSync, constants } from 'node:zlib';
import { Head } from '../../../../server/database/backup/format.ts';
import type { Asking, Role } from './askings.ts';
import type { Left } from './season.ts';

export const STATES = join(import.meta.dirname, 'states');

/** What a server of an earlier version said of its library, and what was left in people's hands. */
export interface KeptAnswers extends Left {
  /** The moment it was asked; ISO 8601, UTC. */
  at: string;
  cookies: Record<Role, string>;
  askings: Asking[];
}

const rows = (state: string): string => join(STATES, `${state}.rows.br`);
const answers = (state: string): string => join(STATES, `${state}.answers.json.br`);
const unpack = (path: string): string => brotliDecompressSync(readFileSync(path)).toString();
/** A score stands in several tables, and only a wide window notices. */
const pack = (text: string): Buffer => brotliCompressSync(text, { params: { [constants.BROTLI_PARAM_LGWIN]: 24 } });

export const keptStates = (): string[] => readdirSync(STATES).filter((file) => file.endsWith('.rows.br')).map((file) => file.replace('.rows.br', '')).sort();
export const answersOf = (state: string): KeptAnswers => JSON.parse(unpack(answers(state))) as KeptAnswers;

/** The lines of its backup. */
export const linesOf = (state: string): string[] => unpack(rows(state)).trimEnd().split('\n');

/** Changes of the database that had been applied when it was kept. */
export const migrationsOf = (state: string): string[] => Head.parse(JSON.parse(linesOf(state)[0]!)).migrations;

export function keepState(state: string, lines: string[], said: KeptAnswers): void {
  writeFileSync(rows(state), pack(lines.join('')));
  writeFileSync(answers(state), pack(JSON.stringify(said)));
}
