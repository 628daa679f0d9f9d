import type { Note } from './part.ts';

/**
 * For each note of `next` its partner in `previous`, both of paired measures; undefined for a new note.
 * A note is first sought with the same time, voice and pitch, then with the same time and pitch, then with the same time, then with the same pitch.
 * Rests never pair with notes, grace notes only with grace notes. Each old note has one partner at most.
 */
export function alignNotes(next: readonly Note[], previous: readonly Note[]): (Note | undefined)[] {
  const partners: (Note | undefined)[] = Array.from({ length: next.length });
  const free = new Set(previous);
  for (const key of KEYS) {
    const waiting = new Map<string, Note[]>();
    for (const note of free) {
      const text = key(note);
      const queue = waiting.get(text);
      if (queue) queue.push(note);
      else waiting.set(text, [note]);
    }
    next.forEach((note, i) => {
      if (partners[i]) return;
      const partner = waiting.get(key(note))?.shift();
      if (!partner) return;
      partners[i] = partner;
      free.delete(partner);
    });
  }
  return partners;
}

const kind = ({ rest, grace }: Note) => `${rest ? 'rest' : 'note'} ${grace ? 'grace' : ''}`;

const KEYS: ((note: Note) => string)[] = [
  (note) => `${kind(note)} ${note.onset} ${note.voice} ${note.midi ?? ''} ${note.duration}`,
  (note) => `${kind(note)} ${note.onset} ${note.midi ?? ''}`,
  (note) => `${kind(note)} ${note.onset} ${note.voice}`,
  (note) => `${kind(note)} ${note.onset}`,
  (note) => `${kind(note)} ${note.midi ?? ''} ${note.duration}`,
];
