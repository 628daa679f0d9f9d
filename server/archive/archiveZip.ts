import { buffer } from 'node:stream/consumers';
import yazl from 'yazl';
import { z } from 'zod';
import { keptMarks, type KeptSet } from '../../core/archive/keptSet.ts';
import { SetFile, type ArchiveFile } from '../../core/archive/setFile.ts';
import { toSetFile } from '../../core/archive/toSetFile.ts';
import type { Documents } from '../http/deps.ts';
import { TroubleAnswer } from '../http/trouble.ts';
import type { Store } from '../store/store.ts';

/** The same archive makes the same bytes at any hour. */
const STAMP = { mtime: new Date(Date.UTC(1980, 0, 2)), mode: 0o100644, forceDosTimestamp: true };

/** What `set.json` may hold, for programs other than ours. */
export const archiveSchema = (): Record<string, unknown> => ({ $id: 'bowline-set-1', title: 'A set of marks kept by Bowline', ...z.toJSONSchema(SetFile) });

const text = (value: unknown): Buffer => Buffer.from(`${JSON.stringify(value, null, 1)}\n`);
export const isPacked = (bytes: Uint8Array): boolean => bytes[0] === 0x50 && bytes[1] === 0x4b;

/** The document with every part's marks in it, as it lies on the stands. */
async function marked(documents: Documents, set: KeptSet): Promise<Uint8Array> {
  let { bytes, fileName } = set;
  for (const part of set.parts) {
    const made = await documents.markDocument({ bytes, fileName, part: part.content.id, ids: part.content, marks: keptMarks(part), form: 'musicxml', superseded: 'hide' });
    if (!made.ok) throw new TroubleAnswer(422, made.trouble);
    bytes = made.bytes;
    fileName = 'marked.musicxml';
  }
  return bytes;
}

/**
 * The whole archive as a zip: archive.json, its schema, and for each set a folder with set.json, the document as it came and the document with the marks in it.
 * Invariant: read back into an empty archive and written again, the bytes are the same.
 */
export async function writeArchive({ store, documents }: { store: Store; documents: Documents }): Promise<Buffer> {
  const zip = new yazl.ZipFile();
  const views = (await store.archive.sets()).sort((a, b) => (a.id < b.id ? -1 : 1));
  const file: ArchiveFile = { format: 'bowline-archive', version: 1, sets: views.map(({ id, title, composer, ensemble, conductor, season }) => ({ id, title, composer, ensemble, conductor, season, folder: `sets/${id}` })) };
  zip.addBuffer(text(file), 'archive.json', STAMP);
  zip.addBuffer(text(archiveSchema()), 'set.schema.json', STAMP);
  for (const { id, folder } of file.sets) {
    const set = (await store.archive.set(id))!;
    const said = toSetFile(set, isPacked(set.bytes));
    zip.addBuffer(text(said), `${folder}/set.json`, STAMP);
    zip.addBuffer(Buffer.from(set.bytes), `${folder}/${said.source.file}`, STAMP);
    zip.addBuffer(Buffer.from(await marked(documents, set)), `${folder}/marked.musicxml`, STAMP);
  }
  zip.end();
  return buffer(zip.outputStream);
}
