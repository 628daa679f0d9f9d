import type { Part } from '../../../../core/music/part.ts';
import { guessInstruments } from '../../../../core/musicxml/guessInstruments.ts';
import { readScore } from '../../../../core/musicxml/readScore.ts';

/** The one part of a document, as an import reads it. */
export function importedPart(text: string): Part {
  const read = readScore(text);
  if (!read.ok) throw new Error(read.fault.text);
  return guessInstruments(read.parts)[0]!;
}
