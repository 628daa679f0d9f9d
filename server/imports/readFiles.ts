import type { Trouble } from '../../core/agreement/wire/http.ts';
import type { Part, Score } from '../../core/music/part.ts';
import type { Documents } from '../http/deps.ts';
import type { NewEdition } from '../store/library.ts';
import type { Watch } from './watch.ts';

export interface ReadFile {
  edition: NewEdition;
  score: Score;
  /** Its string parts. */
  parts: Part[];
}

export type ReadFiles = { ok: true; files: ReadFile[] } | { ok: false; trouble: Trouble };

/** Names of parts that are told where none is for strings. Chosen, not measured. */
const TOLD = 6;

function noStrings({ parts }: Score): Trouble {
  const names = [...new Set(parts.map(({ name }) => name.slice(0, 40)).filter(Boolean))];
  const are = names.length ? ` Its parts are called ${names.slice(0, TOLD).map((name) => `"${name}"`).join(', ')}${names.length > TOLD ? ` and ${names.length - TOLD} more` : ''}.` : parts.length ? ' Its parts have no names.' : ' It has no parts at all.';
  return { code: 'NO_STRING_PARTS', text: `Nothing was imported: no part of the score is for violin, viola, cello or double bass, neither by its name nor by its clef and notes.${are} Name the parts by their instrument and send it again.` };
}

async function readOne(documents: Documents, edition: NewEdition, index: number, { signal, onFile }: Watch): Promise<{ ok: true; file: ReadFile } | { ok: false; trouble: Trouble }> {
  signal?.throwIfAborted();
  const read = await documents.importScore(edition.bytes, edition.fileName, { ...(signal ? { signal } : {}), onReached: (step) => onFile?.(index, { step: step === 0 ? 'unpacking' : 'reading' }) });
  const parts = read.ok ? read.score.parts.filter((part) => part.instrument !== null) : [];
  if (read.ok && parts.length) {
    onFile?.(index, { step: 'read', parts: parts.map(({ name }) => name) });
    return { ok: true, file: { edition, score: read.score, parts } };
  }
  const trouble = read.ok ? noStrings(read.score) : read.trouble;
  onFile?.(index, { step: 'refused', trouble });
  return { ok: false, trouble };
}

/** Reads the files of one work, one after another, every one of them even where one is refused: whoever sent them hears of each. The trouble is that of the first refused. */
export async function readFiles(documents: Documents, editions: readonly NewEdition[], watch: Watch): Promise<ReadFiles> {
  const files: ReadFile[] = [];
  let refused: Trouble | undefined;
  for (const [index, edition] of editions.entries()) {
    const read = await readOne(documents, edition, index, watch);
    if (read.ok) files.push(read.file);
    else refused ??= editions.length === 1 ? read.trouble : { ...read.trouble, text: `${edition.fileName}: ${read.trouble.text}` };
  }
  return refused ? { ok: false, trouble: refused } : { ok: true, files };
}
