import type { z } from 'zod';
import { fromSetFile } from '../../core/archive/fromSetFile.ts';
import type { KeptSet } from '../../core/archive/keptSet.ts';
import { ArchiveFile, SetFile } from '../../core/archive/setFile.ts';
import { FileError } from '../files/fileFault.ts';
import { unpack } from '../files/unpack.ts';
import { zipDirectory, type ZipEntry } from '../files/zipDirectory.ts';
import type { Documents } from '../http/deps.ts';
import { trouble, TroubleAnswer } from '../http/trouble.ts';

/** Many works, each a score and its marked copy. Chosen, not measured. */
const ARCHIVE_LIMITS = { entries: 6100, total: 1_500_000_000, ratio: 250, ratioFrom: 1_000_000 };

const spoilt = (what: string): TroubleAnswer => trouble(422, 'BAD_ARCHIVE', `Nothing was taken in: ${what}. Export the archive again where it came from, and send that file as it is.`);

function json<S extends z.ZodType>(schema: S, bytes: Buffer, name: string): z.infer<S> {
  let value: unknown;
  try {
    value = JSON.parse(bytes.toString('utf8'));
  } catch {
    throw spoilt(`"${name}" in it cannot be read`);
  }
  const read = schema.safeParse(value);
  if (read.success) return read.data;
  const issue = read.error.issues[0];
  throw spoilt(`"${name}" in it is not as it should be (${issue?.path.join('.') || 'its beginning'}: ${issue?.message ?? 'unknown form'})`);
}

/** Every set of an archive that was exported, read whole and proved: its form, its document, its marks against its log. Throws a TroubleAnswer at the first that is not. */
export async function readArchive(documents: Documents, archive: Buffer): Promise<KeptSet[]> {
  try {
    const entries = new Map((await zipDirectory(archive, ARCHIVE_LIMITS)).map((entry) => [entry.name, entry]));
    const file = json(ArchiveFile, open(archive, entries, 'archive.json'), 'archive.json');
    const sets: KeptSet[] = [];
    for (const { folder, id } of file.sets) {
      const set = await readSet(documents, archive, entries, folder);
      if (set.id !== id) throw spoilt(`"${folder}" in it holds another set than it says`);
      sets.push(set);
    }
    return sets;
  } catch (reason) {
    if (reason instanceof FileError) throw spoilt('this is no archive of Bowline, or it was damaged on its way');
    throw reason;
  }
}

function open(archive: Buffer, entries: ReadonlyMap<string, ZipEntry>, name: string): Buffer {
  const entry = entries.get(name);
  if (!entry) throw spoilt(`"${name}" is not in it`);
  return unpack(archive, entry);
}

async function readSet(documents: Documents, archive: Buffer, entries: ReadonlyMap<string, ZipEntry>, folder: string): Promise<KeptSet> {
  const file = json(SetFile, open(archive, entries, `${folder}/set.json`), `${folder}/set.json`);
  const bytes = new Uint8Array(open(archive, entries, `${folder}/${file.source.file}`));
  const read = await documents.importScore(bytes, file.source.name);
  if (!read.ok) throw new TroubleAnswer(422, read.trouble);
  const made = fromSetFile(file, read.score.parts, bytes);
  if (!made.ok) throw spoilt(`the marks of "${made.part}" in "${file.title}" do not fit its document or its log`);
  return made.set;
}
