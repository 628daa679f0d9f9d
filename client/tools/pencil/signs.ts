import type { Finger, Mark, MarkValue } from '../../../core/music/mark.ts';
import { exact, fraction, quarters, type ExactTime } from '../../../core/music/time.ts';
import type { PartIndex } from '../../library/partIndex.ts';

/** What a key or a sign on the ledge writes. */
export type Sign =
  | { sign: 'finger'; finger: Finger }
  | { sign: 'string'; string: 1 | 2 | 3 | 4 }
  | { sign: 'bow'; bow: 'up' | 'down' }
  | { sign: 'change' | 'reach' | 'harmonic' | 'retake' | 'hooked' }
  | { sign: 'slur'; slur: 'split' | 'join' };

/** Half of a note, for a change that is to fall inside it. */
const half = (duration: ExactTime): ExactTime => exact(fraction(duration).div(2));

/**
 * A change on a note under a slur comes as the note begins; on a note that begins its stroke it comes in the middle, where alone it means
 * something.
 */
function changeOn(note: string, { notes, underSlur }: PartIndex): MarkValue {
  const { duration, ties } = notes.get(note)!.note;
  const begins = !underSlur.has(note) && !ties.includes('stop');
  return { kind: 'change', after: begins && quarters(duration) > 0 ? half(duration) : 0 };
}

const NEXT_REACH = { extension: 'contraction', contraction: null } as const;

function reachOn(marks: readonly Mark[]): MarkValue {
  const now = marks.find(({ value }) => value.kind === 'reach')?.value;
  const next = now?.kind === 'reach' ? NEXT_REACH[now.reach] : 'extension';
  return next ? { kind: 'reach', reach: next } : { kind: 'none', slot: 'reach' };
}

function fingerOn(finger: Finger, marks: readonly Mark[], substituting: boolean): MarkValue {
  const now = marks.find(({ value }) => value.kind === 'finger')?.value;
  return substituting && now?.kind === 'finger' && now.finger !== finger ? { kind: 'finger', finger: now.finger, substitution: finger } : { kind: 'finger', finger };
}

/** Marks a sign writes on the selected notes. `standing`: what is on a note already, pencilled or in ink. Of a passage, bow signs go on its first note. */
export function marksOf(sign: Sign, notes: readonly string[], index: PartIndex, standing: (note: string) => readonly Mark[], substituting: boolean): Mark[] {
  const first = notes.slice(0, 1);
  const write = (ids: readonly string[], value: (note: string) => MarkValue) => ids.map((note) => ({ note, value: value(note) }));
  switch (sign.sign) {
    case 'finger':
      return write(notes, (note) => fingerOn(sign.finger, standing(note), substituting));
    case 'string':
      return write(notes, () => ({ kind: 'string', string: sign.string }));
    case 'bow':
      return write(first, () => ({ kind: 'bow', bow: sign.bow }));
    case 'change':
      return write(first, (note) => changeOn(note, index));
    case 'reach':
      return write(notes, (note) => reachOn(standing(note)));
    case 'harmonic':
      return write(notes, () => ({ kind: 'harmonic', harmonic: 'natural' }));
    case 'retake':
      return write(first, () => ({ kind: 'retake' }));
    case 'hooked':
      return write(notes, () => ({ kind: 'hooked' }));
    case 'slur':
      return write(first, () => ({ kind: 'slur', slur: sign.slur }));
  }
}
