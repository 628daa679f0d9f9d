import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Part } from '../music/part.ts';

const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^\p{L}\p{N}]+/gu, ' ').trim();

export interface Heading {
  title: string;
  composer: string;
}

/**
 * True when two headings name one work: one title is the other or its beginning, and the composer's last name is the same or one is not told. Accents, case and signs
 * do not count. Example: "Serenade, Op. 22" by "A. Holmwood" and "SERENADE op 22: I. Moderato" by "Holmwood" are alike.
 */
export function isAlike(a: Heading, b: Heading): boolean {
  const [one, other] = [plain(a.title), plain(b.title)];
  if (!one || !other) return false;
  const [by, and] = [plain(a.composer).split(' ').at(-1)!, plain(b.composer).split(' ').at(-1)!];
  const sameTitle = one === other || one.startsWith(`${other} `) || other.startsWith(`${one} `);
  return sameTitle && (!by || !and || by === and);
}

/**
 * Prints of the music of a part's measures, each once: 16 hexadecimal digits over pitches, onsets and lengths. Measures of rests alone have none; ids, numbers and
 * marks do not count. Example: a part and its re-export with other ids have equal prints.
 */
export function musicPrints(part: Part): string[] {
  const said = part.measures.map((measure) => measure.notes.filter(({ rest }) => !rest).map(({ midi, onset, duration }) => `${midi ?? ''}@${onset}+${duration}`).sort().join(' '));
  return [...new Set(said.filter(Boolean))].map((text) => bytesToHex(sha256(utf8ToBytes(text))).slice(0, 16));
}

/** Share of the shorter part's different measures that stand in the other too, 0 to 1; 0 where one has none. Example: `shareOf(prints, prints)` is 1. */
export function shareOf(a: readonly string[], b: readonly string[]): number {
  const there = new Set(b);
  const shorter = Math.min(a.length, b.length);
  return shorter ? a.filter((print) => there.has(print)).length / shorter : 0;
}
