import { buffer } from 'node:stream/consumers';
import yazl from 'yazl';
import { CONTAINER, MUSICXML_TYPE } from './container.ts';
import type { OpenedFile } from './openFile.ts';
import { unpack } from './unpack.ts';
import { zipDirectory } from './zipDirectory.ts';

/** Media type of a compressed score (MusicXML 4.0, container). */
const MXL_TYPE = 'application/vnd.recordare.musicxml';
/** The same score makes the same bytes at any hour. */
const STAMP = { mtime: new Date(Date.UTC(1980, 0, 2)), mode: 0o100644, forceDosTimestamp: true };

/**
 * Packs a score as .mxl by the book: `mimetype` first and unpacked, META-INF/container.xml, the score. Whatever else stood in the source archive is
 * kept byte for byte; its container.xml too.
 */
export async function packMxl(score: Uint8Array, source: OpenedFile['archive']): Promise<Uint8Array> {
  const root = source?.root ?? 'score.musicxml';
  const others = source ? await otherEntries(source) : [];
  const zip = new yazl.ZipFile();
  zip.addBuffer(Buffer.from(MXL_TYPE), 'mimetype', { ...STAMP, compress: false });
  zip.addBuffer(others.find(({ name }) => name === CONTAINER)?.bytes ?? containerFor(root), CONTAINER, STAMP);
  zip.addBuffer(Buffer.from(score), root, STAMP);
  for (const { name, bytes } of others) if (name !== CONTAINER) zip.addBuffer(bytes, name, STAMP);
  zip.end();
  return buffer(zip.outputStream);
}

async function otherEntries({ bytes, root }: NonNullable<OpenedFile['archive']>): Promise<{ name: string; bytes: Buffer }[]> {
  const entries = await zipDirectory(bytes);
  return entries.filter(({ name }) => name !== root && name !== 'mimetype').map((entry) => ({ name: entry.name, bytes: unpack(bytes, entry) }));
}

function containerFor(root: string): Buffer {
  return Buffer.from(`<?xml version="1.0" encoding="UTF-8"?>
<container>
  <rootfiles>
    <rootfile full-path="${root}" media-type="${MUSICXML_TYPE}"/>
  </rootfiles>
</container>
`);
}
