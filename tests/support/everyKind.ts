import type { Mark, MarkValue } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';

/** Every kind of mark there is, in every form that is written differently; a slur is joined last, where room for it is needed. */
export const EVERY_VALUE: MarkValue[] = [
  ...([0, 1, 2, 3, 4, 'thumb'] as const).map((finger): MarkValue => ({ kind: 'finger', finger })),
  { kind: 'finger', finger: 4, substitution: 1 },
  ...[1, 2, 3, 4].map((string): MarkValue => ({ kind: 'string', string })),
  { kind: 'reach', reach: 'extension' }, { kind: 'reach', reach: 'contraction' },
  { kind: 'harmonic', harmonic: 'natural' }, { kind: 'harmonic', harmonic: 'artificial' },
  { kind: 'bow', bow: 'up' }, { kind: 'bow', bow: 'down' },
  { kind: 'change', after: 0 }, { kind: 'change', after: '1/2' },
  { kind: 'retake' }, { kind: 'hooked' },
  { kind: 'text', text: 'Ⅳ & <frog>' },
  { kind: 'slur', slur: 'split' }, { kind: 'slur', slur: 'join' },
];

/** Every kind once, each on a note of its own, evenly over the part; the split under a slur if there is any. On a part of fewer notes the first kinds come. */
export function everyKind(part: Part): Mark[] {
  const notes = part.measures.flatMap(({ notes: list }) => list).filter(({ rest, hidden, cue, grace, chord, pitch }) => !rest && !hidden && !cue && !grace && !chord && pitch);
  const place = new Map(notes.map(({ id }, at) => [id, at]));
  const within = part.slurs.map(({ from, to }) => [place.get(from) ?? -1, place.get(to) ?? -1] as const).find(([from, to]) => from >= 0 && to > from + 1);
  const split = within ? within[0] + 1 : notes.length - 1;
  const free = notes.filter((_, at) => at !== split && (!within || at < within[0] || at > within[1]));
  const step = Math.max(1, Math.floor(free.length / EVERY_VALUE.length));
  const values = EVERY_VALUE.filter(({ kind }) => kind !== 'slur');
  const marks = values.flatMap((value, i): Mark[] => (free[i * step] ? [{ note: free[i * step]!.id, value }] : []));
  if (within) marks.push({ note: notes[split]!.id, value: { kind: 'slur', slur: 'split' } });
  const unslurred = free.find(({ id }, i) => i % step && free[i + 1] && place.get(free[i + 1]!.id) === place.get(id)! + 1 && !part.slurs.some(({ from, to }) => place.get(from)! <= place.get(id)! + 1 && place.get(to)! >= place.get(id)!));
  if (unslurred) marks.push({ note: unslurred.id, value: { kind: 'slur', slur: 'join' } });
  return marks;
}
