import type { Pitch } from '../../../core/music/pitch.ts';

/**
 * A compact notation for writing a part by hand, one measure a line: "41 {p} B4hn( D5q C5q)".
 * A line begins with the printed measure number. A token is a direction in braces, or a note: pitch (or `r` for a rest, or [chord]),
 * value (w h q e s), a dot, a 3 for a triplet, then signs: ( ) slur, ~ tie to the next, ' staccato, > accent, ^ fermata,
 * n down-bow, v up-bow, @2 finger. "&&" begins a second voice.
 */
export interface WrittenNote {
  /** Empty for a rest. */
  pitches: Pitch[];
  /** Length in twelfths of a quarter. */
  ticks: number;
  type: NoteType;
  dotted: boolean;
  triplet: boolean;
  signs: string[];
  finger: string | null;
}

export type NoteType = 'whole' | 'half' | 'quarter' | 'eighth' | '16th';
export type Entry = { kind: 'direction'; text: string } | { kind: 'note'; note: WrittenNote };
export interface WrittenMeasure { number: string; voices: Entry[][] }

/** Ticks to a quarter: divisible by the triplet eighth and the sixteenth. */
export const DIVISIONS = 12;

const VALUES: Record<string, [NoteType, number]> = { w: ['whole', 48], h: ['half', 24], q: ['quarter', 12], e: ['eighth', 6], s: ['16th', 3] };
const TOKEN = /^(r|[A-G][#b]?\d|\[[^\]]+\])([whqes])(\.?)(3?)((?:[()~'>^nv]|@\d)*)$/;

function pitchOf(text: string): Pitch {
  const [, step, sign, octave] = /^([A-G])([#b]?)(\d)$/.exec(text) ?? [];
  if (step === undefined) throw new Error(`No pitch: ${text}`);
  return { step: step as Pitch['step'], alter: sign === '#' ? 1 : sign === 'b' ? -1 : 0, octave: Number(octave) };
}

function noteOf(token: string): WrittenNote {
  const [, head, value, dot, three, signs] = TOKEN.exec(token) ?? [];
  if (head === undefined) throw new Error(`No note: ${token}`);
  const [type, plain] = VALUES[value!]!;
  const dotted = dot === '.';
  const ticks = (plain * (dotted ? 3 : 2) * (three ? 2 : 3)) / 6;
  const pitches = head === 'r' ? [] : head.startsWith('[') ? head.slice(1, -1).split(' ').map(pitchOf) : [pitchOf(head)];
  return { pitches, ticks, type, dotted, triplet: three === '3', signs: signs!.match(/[()~'>^nv]/g) ?? [], finger: /@(\d)/.exec(signs!)?.[1] ?? null };
}

/** The measures of a part; throws with the line where the notation is wrong. */
export function readNotation(text: string): WrittenMeasure[] {
  return text.trim().split('\n').map((line) => {
    try {
      const [, number, music] = /^(\d+)\s+(.*)$/.exec(line) ?? [];
      if (number === undefined) throw new Error('No measure number');
      const voices = music!.split('&&').map((voice) =>
        (voice.match(/\{[^}]*\}|\[[^\]]*\]\S+|\S+/g) ?? []).map((token): Entry =>
          token.startsWith('{') ? { kind: 'direction', text: token.slice(1, -1) } : { kind: 'note', note: noteOf(token) }));
      return { number, voices };
    } catch (cause) {
      throw new Error(`Demo piece, line "${line}"`, { cause });
    }
  });
}
