import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Mark } from '../music/mark.ts';
import type { Note } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';

/** What of a note a finding can depend on. */
const musicOf = (note: Note) => [note.id, note.pitch, note.onset, note.duration, note.dynamic, note.tempo, note.slurs, note.ties, note.technical, note.ornaments, note.pizzicato];

function markOf(mark: Mark, seats: readonly SeatId[]): string | null {
  const own = mark.seats === undefined || mark.seats === 'all' ? 'all' : mark.seats.filter((seat) => !seats.length || seats.includes(seat)).sort();
  return own.length ? JSON.stringify([mark.note, mark.value, own]) : null;
}

/**
 * 16 hex digits that change when the music of these notes changes, or a mark on them for one of these seats, or what it depends on `besides`. The order of marks does not count.
 * Example: an edit five measures on leaves it as it was.
 */
export function fingerprintOf(notes: readonly Note[], marksOnThem: readonly Mark[], seats: readonly SeatId[], besides?: string): string {
  const marks = marksOnThem.map((mark) => markOf(mark, seats)).filter((text) => text !== null).sort();
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify([notes.map(musicOf), marks, ...(besides === undefined ? [] : [besides])])))).slice(0, 16);
}
