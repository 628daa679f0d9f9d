import { lineOfPart, type PartLine } from '../../core/fingering/partLine.ts';
import type { Part } from '../../core/music/part.ts';

/** The line of a part from one note to another, both included, whichever comes first; from its measures' edges where a note is not in the line. */
export function passageLine(part: Part, from: string, to: string): PartLine & { measures: { from: number; to: number } } {
  const ordinals = part.measures.flatMap((measure) => (measure.notes.some(({ id }) => id === from || id === to) ? [measure.ordinal] : []));
  const measures = { from: Math.min(...ordinals), to: Math.max(...ordinals) };
  const { line, tempo } = lineOfPart(part, measures.from, measures.to);
  const at = (id: string, other: number): number => {
    const found = line.findIndex((note) => note.id === id);
    return found === -1 ? other : found;
  };
  const [one, two] = [at(from, 0), at(to, line.length - 1)];
  return { line: line.slice(Math.min(one, two), Math.max(one, two) + 1), tempo, measures };
}
