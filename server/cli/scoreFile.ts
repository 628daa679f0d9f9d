import { readFile } from 'node:fs/promises';
import { type ReadPart, type ReadScore, readScore } from '../../core/musicxml/readScore.ts';
import { type OpenedFile, openFile } from '../files/openFile.ts';
import { BadInput } from './command.ts';

export interface ScoreFile {
  bytes: Uint8Array;
  file: OpenedFile;
  read: Extract<ReadScore, { ok: true }>;
}

/** Bytes of a file that was named on the command line. */
export async function bytesOf(path: string): Promise<Uint8Array> {
  try {
    return await readFile(path);
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    const why = code === 'ENOENT' ? 'There is no such file' : code === 'EISDIR' ? 'That is a folder' : code === 'EACCES' ? 'The file may not be read' : `The file cannot be read (${code})`;
    throw new BadInput(`${path}: ${why}. Check the name.`);
  }
}

/** Opens and reads a score, or throws BadInput with line and reason. */
export async function openScore(path: string): Promise<ScoreFile> {
  const bytes = await bytesOf(path);
  const file = await openFile(bytes, path);
  const read = file.ok ? readScore(file.text) : file;
  if (!file.ok) throw new BadInput(`${path}: ${file.fault.text}`);
  if (!read.ok) throw new BadInput(`${path}${read.fault.line === undefined ? '' : `:${read.fault.line}`}: ${read.fault.text}`);
  return { bytes, file, read };
}

/** A part by its id, or BadInput naming the parts there are. */
export function partOf({ read }: ScoreFile, id: string): ReadPart {
  const found = read.parts.find(({ part }) => part.id === id);
  if (!found) throw new BadInput(`The score has no part "${id}". Its parts are: ${read.parts.map(({ part }) => `${part.id} (${part.name})`).join(', ') || 'none'}.`);
  return found;
}
