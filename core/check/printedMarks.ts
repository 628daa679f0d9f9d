import type { MarkValue } from '../music/mark.ts';
import type { Note, TechnicalMark } from '../music/part.ts';

function fingersIn(technical: readonly TechnicalMark[]): string[] {
  return technical
    .filter(({ name, detail }) => name === 'fingering' && detail?.substitution !== 'yes' && detail?.alternate !== 'yes')
    .flatMap(({ value }) => (value ?? '').split(/\s+/).filter(Boolean));
}

function fingerMarks(technical: readonly TechnicalMark[]): MarkValue[] {
  if (technical.some(({ name }) => name === 'open-string')) return [{ kind: 'finger', finger: 0 }];
  if (technical.some(({ name }) => name === 'thumb-position')) return [{ kind: 'finger', finger: 'thumb' }];
  const fingers = fingersIn(technical);
  // Two figures on one note are those of a double stop or a choice: whose they are cannot be told.
  if (fingers.length !== 1 || !/^[0-4]$/.test(fingers[0]!)) return [];
  return [{ kind: 'finger', finger: Number(fingers[0]) as 0 | 1 | 2 | 3 | 4 }];
}

function stringMarks(technical: readonly TechnicalMark[]): MarkValue[] {
  const strings = technical.filter(({ name }) => name === 'string').map(({ value }) => Number(value));
  return strings.length === 1 && [1, 2, 3, 4].includes(strings[0]!) ? [{ kind: 'string', string: strings[0]! }] : [];
}

/** What the source itself prints on a note, in the words of our own marks; hidden signs are not printed. Source: musicxml-4. */
export function printedMarks(note: Note): MarkValue[] {
  if (!note.technical.length) return [];
  const shown = note.technical.filter(({ hidden }) => !hidden);
  const has = (name: string) => shown.some((mark) => mark.name === name);
  const harmonic = shown.find(({ name }) => name === 'harmonic');
  const marks = [...fingerMarks(shown), ...stringMarks(shown)];
  if (harmonic) marks.push({ kind: 'harmonic', harmonic: 'artificial' in (harmonic.detail ?? {}) ? 'artificial' : 'natural' });
  if (has('up-bow') !== has('down-bow')) marks.push({ kind: 'bow', bow: has('up-bow') ? 'up' : 'down' });
  return marks;
}
