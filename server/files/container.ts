import { child, childrenNamed, type XmlElement } from '../../core/musicxml/element.ts';
import { parseXml } from '../../core/musicxml/parse.ts';
import { decode, encodingOf } from './encoding.ts';
import { FileError } from './fileFault.ts';

export const CONTAINER = 'META-INF/container.xml';
/** Media type of MusicXML inside an archive (MusicXML 4.0, container). */
export const MUSICXML_TYPE = 'application/vnd.recordare.musicxml+xml';

/**
 * Path of the score in a .mxl, by its container.xml, read leniently (white space, "./", wrong case). Without a container the only score-like file counts.
 * Throws a FileError when there is no such file.
 */
export function rootPath(names: readonly string[], container: Uint8Array | undefined): string {
  const candidates = container ? rootFiles(container) : names.filter((name) => /\.(musicxml|xml)$/i.test(name) && !name.startsWith('META-INF/'));
  for (const wanted of candidates) {
    const path = wanted.trim().replace(/^(\.?\/)+/, '').replace(/\\/g, '/');
    const found = names.find((name) => name === path) ?? names.find((name) => name.toLowerCase() === path.toLowerCase());
    if (found) return found;
  }
  const said = candidates[0] ? `says its score is "${candidates[0].trim().slice(0, 80)}", and no such file is in it` : 'holds no score';
  throw new FileError('NO_SCORE_INSIDE', `The archive ${said}. Save the score again as .mxl or .musicxml and send that file.`);
}

function rootFiles(container: Uint8Array): string[] {
  const parsed = parseXml(decode(container, encodingOf(container)));
  if (!parsed.ok) throw new FileError('BAD_CONTAINER', `META-INF/container.xml of the archive cannot be read: ${parsed.fault.text}`, parsed.fault.line);
  const files = descendants(parsed.root).filter(({ attributes }) => attributes['full-path']);
  const scores = files.filter(({ attributes }) => !attributes['media-type'] || attributes['media-type'].trim() === MUSICXML_TYPE);
  return (scores.length ? scores : files).map(({ attributes }) => attributes['full-path'] ?? '');
}

function descendants(root: XmlElement): XmlElement[] {
  const list = child(root, 'rootfiles');
  return list ? childrenNamed(list, 'rootfile') : [];
}
