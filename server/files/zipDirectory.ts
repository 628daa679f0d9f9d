import { type Entry, fromBuffer } from 'yauzl';
import { FileError } from './fileFault.ts';
import { ZIP_LIMITS, type ZipLimits } from './zipLimits.ts';

/** Where one entry's packed bytes lie. */
export interface ZipEntry {
  name: string;
  method: number;
  crc: number;
  size: number;
  start: number;
  end: number;
}

const AGAIN = 'Save the score again from your notation program and send that file.';
const bad = (text: string) => new FileError('BAD_ARCHIVE', `${text} ${AGAIN}`);

/**
 * Lists the files of a .mxl after checking everything that can be checked without unpacking: number and size of entries, names, duplicates,
 * encryption, links, packing methods, local headers against the directory, overlaps. Throws a FileError.
 */
export async function zipDirectory(bytes: Buffer, limits: ZipLimits = ZIP_LIMITS): Promise<ZipEntry[]> {
  const entries = (await rawEntries(bytes, limits)).map((entry) => located(entry, bytes));
  const names = new Set<string>();
  let total = 0;
  for (const { name, size, start, end } of entries) {
    const key = name.normalize('NFC').toLowerCase();
    if (names.has(key)) throw bad(`The archive holds "${name}" twice.`);
    names.add(key);
    total += size;
    if (total > limits.total || (size > limits.ratioFrom && size > (end - start) * limits.ratio)) {
      throw new FileError('TOO_BIG', `The archive would unpack to more than any score holds ("${name}"). Nothing was read. ${AGAIN}`);
    }
  }
  const byStart = entries.toSorted((a, b) => a.start - b.start);
  byStart.forEach((entry, i) => {
    const next = byStart[i + 1];
    if (next && next.headerStart < entry.end) throw bad(`In the archive "${entry.name}" and "${next.name}" lie on top of each other.`);
  });
  return entries.filter(({ name }) => !name.endsWith('/'));
}

function rawEntries(bytes: Buffer, limits: ZipLimits): Promise<Entry[]> {
  return new Promise((resolve, reject) => {
    const fail = (error: Error) => reject(bad(`The archive cannot be opened (${error.message}).`));
    fromBuffer(bytes, { lazyEntries: true, validateEntrySizes: true, strictFileNames: true }, (error, zip) => {
      if (error) return fail(error);
      if (zip.entryCount > limits.entries) return reject(new FileError('TOO_BIG', `The archive lists ${zip.entryCount} files; a score needs a few. ${AGAIN}`));
      const entries: Entry[] = [];
      zip.on('error', fail);
      zip.on('entry', (entry: Entry) => {
        entries.push(entry);
        zip.readEntry();
      });
      zip.on('end', () => resolve(entries));
      zip.readEntry();
    });
  });
}

function located(entry: Entry, bytes: Buffer): ZipEntry & { headerStart: number } {
  const name = entry.fileName;
  if (/\p{Cc}/u.test(name) || name.length > 500 || name.split('/').some((step) => step === '.' || (step === '' && !name.endsWith('/')))) throw bad('A file in the archive has a name no score uses.');
  if (entry.generalPurposeBitFlag & 1) throw bad(`"${name}" in the archive is locked with a password.`);
  if (((entry.externalFileAttributes >>> 16) & 0o170000) === 0o120000) throw bad(`"${name}" in the archive is a link and no file.`);
  if (entry.compressionMethod !== 0 && entry.compressionMethod !== 8) throw bad(`"${name}" in the archive is packed in a way .mxl does not allow.`);
  const headerStart = entry.relativeOffsetOfLocalHeader;
  if (headerStart + 30 > bytes.length || bytes.readUInt32LE(headerStart) !== 0x04034b50) throw bad(`The archive points to "${name}" where no file begins.`);
  const nameLength = bytes.readUInt16LE(headerStart + 26);
  const start = headerStart + 30 + nameLength + bytes.readUInt16LE(headerStart + 28);
  const end = start + entry.compressedSize;
  if (end > bytes.length) throw bad(`"${name}" in the archive is cut off.`);
  if (!bytes.subarray(headerStart + 30, headerStart + 30 + nameLength).equals(entry.fileNameRaw)) throw bad(`"${name}" has two different names in the archive.`);
  return { name, method: entry.compressionMethod, crc: entry.crc32, size: entry.uncompressedSize, headerStart, start, end };
}
