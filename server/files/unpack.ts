import { crc32, inflateRawSync } from 'node:zlib';
import { FileError } from './fileFault.ts';
import type { ZipEntry } from './zipDirectory.ts';

/** Bytes of one entry. Never unpacks more than the entry says; throws a FileError when size or checksum differ from what it says. */
export function unpack(archive: Buffer, entry: ZipEntry): Buffer {
  const packed = archive.subarray(entry.start, entry.end);
  const bytes = entry.method === 0 ? packed : inflated(packed, entry);
  if (bytes.length !== entry.size) throw damaged(entry, 'is not as long as the archive says');
  if (crc32(bytes) !== entry.crc) throw damaged(entry, 'does not match its checksum');
  return bytes;
}

function inflated(packed: Buffer, entry: ZipEntry): Buffer {
  try {
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, entry.size) });
  } catch {
    throw damaged(entry, 'cannot be unpacked, or is longer than the archive says');
  }
}

function damaged(entry: ZipEntry, how: string): FileError {
  return new FileError('BAD_ARCHIVE', `"${entry.name}" in the archive ${how}; the file was damaged on its way. Send it again.`);
}
