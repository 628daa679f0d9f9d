import { crc32, deflateRawSync } from 'node:zlib';

/** One file of an archive, with every field open to a lie. */
export interface HandEntry {
  name: string;
  body: Buffer;
  deflate?: boolean;
  /** Said size, checksum, flags and mode, where they are not the true ones. */
  size?: number;
  crc?: number;
  flags?: number;
  mode?: number;
  /** Name in the directory, where it differs from the one at the file itself. */
  listedAs?: string;
  /** Packed already; `size` and `crc` must be given then. */
  packed?: Buffer;
}

/** An entry of the directory: what is said, and where the file is said to lie. */
export interface Listed {
  entry: HandEntry;
  packedLength: number;
  at: number;
}

function fields({ body, size = body.length, crc = crc32(body), flags = 0, deflate }: HandEntry, packedLength: number, name: Buffer): Buffer {
  const bytes = Buffer.alloc(26);
  bytes.writeUInt16LE(20, 0);
  bytes.writeUInt16LE(flags, 2);
  bytes.writeUInt16LE(deflate ? 8 : 0, 4);
  bytes.writeUInt16LE(0x21, 8);
  bytes.writeUInt32LE(crc, 10);
  bytes.writeUInt32LE(packedLength, 14);
  bytes.writeUInt32LE(size, 18);
  bytes.writeUInt16LE(name.length, 22);
  return bytes;
}

/** The file itself: its local header and its packed bytes (PKWARE APPNOTE 4.3.7). */
export function localFile(entry: HandEntry): { bytes: Buffer; packedLength: number } {
  const packed = entry.packed ?? (entry.deflate ? deflateRawSync(entry.body) : entry.body);
  const name = Buffer.from(entry.name);
  return { bytes: Buffer.concat([Buffer.from('PK\x03\x04'), fields(entry, packed.length, name), name, packed]), packedLength: packed.length };
}

/** The directory at the end of an archive (PKWARE APPNOTE 4.3.12 and 4.3.16). */
export function directory(listed: readonly Listed[], at: number): Buffer {
  const rows = listed.map(({ entry, packedLength, at: start }) => {
    const name = Buffer.from(entry.listedAs ?? entry.name);
    const tail = Buffer.alloc(14);
    tail.writeUInt32LE(((entry.mode ?? 0o100644) << 16) >>> 0, 6);
    tail.writeUInt32LE(start, 10);
    return Buffer.concat([Buffer.from('PK\x01\x02\x14\x03', 'latin1'), fields(entry, packedLength, name), tail, name]);
  });
  const rowBytes = Buffer.concat(rows);
  const end = Buffer.alloc(22);
  end.write('PK\x05\x06', 'latin1');
  end.writeUInt16LE(Math.min(listed.length, 0xffff), 8);
  end.writeUInt16LE(Math.min(listed.length, 0xffff), 10);
  end.writeUInt32LE(rowBytes.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([rowBytes, end]);
}

/** An archive of these files, one after another, as they say they are. */
export function zipByHand(entries: readonly HandEntry[]): Buffer {
  let at = 0;
  const listed: Listed[] = [];
  const files = entries.map((entry) => {
    const { bytes, packedLength } = localFile(entry);
    listed.push({ entry, packedLength, at });
    at += bytes.length;
    return bytes;
  });
  return Buffer.concat([...files, directory(listed, at)]);
}
