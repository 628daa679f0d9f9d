import type { Part } from '../music/part.ts';
import { staffStep } from '../music/pitch.ts';
import { linesOf, type Line, type LineEvent } from './line.ts';
import { runOf, type Run } from './run.ts';

/** same: the same pitches · transposed: the same intervals in semitones · steps: the same intervals on the staff, by letters. */
export type FigureLikeness = 'same' | 'transposed' | 'steps';

/** A figure found again. */
export interface Figure {
  likeness: FigureLikeness;
  /** Semitones from the figure to this place, by the first pitches of both; positive is higher. */
  by: number;
  /** `a` is the figure, `b` the place. */
  run: Run;
}

const keyOf = ({ head }: LineEvent): number | undefined => head.sounding ?? head.midi;
const stepOf = ({ head }: LineEvent): number | undefined => (head.pitch ? staffStep(head.pitch) : undefined);
const rhythm = (event: LineEvent, first: boolean): string => `${event.lasts}:${first ? '' : event.gap}:${event.tremolo}`;
/** Pitch classes of a chord above its head, so that a chord is found as one. */
const chord = (event: LineEvent): string => {
  const key = keyOf(event) ?? 0;
  return event.pitches.split('+').map((pitch) => (((Number(pitch) - key) % 12) + 12) % 12).sort((x, y) => x - y).join('+');
};

function likenessAt(figure: Line, line: Line, at: number): FigureLikeness | null {
  const [first, there] = [figure[0]!, line[at]!];
  const [semitones, steps] = [(keyOf(there) ?? NaN) - (keyOf(first) ?? NaN), (stepOf(there) ?? NaN) - (stepOf(first) ?? NaN)];
  let [exact, lettered] = [true, true];
  for (let i = 0; i < figure.length && (exact || lettered); i += 1) {
    const [a, b] = [figure[i]!, line[at + i]!];
    if (rhythm(a, i === 0) !== rhythm(b, i === 0)) return null;
    exact &&= (keyOf(b) ?? NaN) - (keyOf(a) ?? NaN) === semitones && chord(a) === chord(b);
    lettered &&= (stepOf(b) ?? NaN) - (stepOf(a) ?? NaN) === steps && a.pitches.split('+').length === b.pitches.split('+').length;
  }
  if (!exact && !lettered) return null;
  return exact ? (semitones === 0 ? 'same' : 'transposed') : 'steps';
}

/** The line, and the stretch of it, that holds most of the notes. */
function placeOf(lines: readonly Line[], notes: ReadonlySet<string>): { line: number; first: number; length: number } | null {
  const held = lines.map((line) => line.flatMap(({ head }, i) => (notes.has(head.id) ? [i] : [])));
  const most = held.reduce((best, one, i) => (one.length > held[best]!.length ? i : best), 0);
  const found = held[most];
  return found?.length ? { line: most, first: found[0]!, length: found.at(-1)! - found[0]! + 1 } : null;
}

/**
 * Where else in a part a figure is played: the same rhythm with the same intervals, at the same pitch or moved, in semitones or by letters on the staff.
 * In the order of the part; places that would overlap the figure or one another are left out, the earlier staying. Empty where fewer than
 * `least` events are in hand (2; chosen, not measured): one note is no figure. `notes`: ids of the passage, the notes of one voice.
 * Example: a turn of four eighths that comes again a fourth higher gives `{ likeness: 'transposed', by: 5, run }`.
 */
export function figuresLike(part: Part, notes: readonly string[], least = 2): Figure[] {
  const lines = linesOf(part);
  const place = lines.length ? placeOf(lines, new Set(notes)) : null;
  if (!place || place.length < least) return [];
  const figure = lines[place.line]!.slice(place.first, place.first + place.length);
  const found: Figure[] = [];
  lines.forEach((line, at) => {
    for (let first = 0; first + place.length <= line.length; first += 1) {
      if (at === place.line && Math.abs(first - place.first) < place.length) continue;
      const likeness = likenessAt(figure, line, first);
      if (!likeness) continue;
      const run = runOf('rhythm', { lines, line: place.line, first: place.first }, { lines, line: at, first }, place.length);
      found.push({ likeness, by: keyOf(line[first]!)! - keyOf(figure[0]!)!, run });
      first += place.length - 1;
    }
  });
  return found.sort((a, b) => a.run.b.from - b.run.b.from || a.run.b.first - b.run.b.first);
}
