import type { InstrumentName, Part } from '../music/part.ts';
import { childrenNamed, textOf, type XmlElement } from './element.ts';
import type { ReadPart } from './readScore.ts';

/** Names that programs give when nobody has named a part. */
const SAYS_NOTHING = /^((music(xml)?|musik|part|parte|partie|stimme|staff|system|example|instrument|untitled|unnamed|strings?|streicher|archi|cordes|p|part name|name)\s*)*[\d.\s]*$/i;
/** A string orchestra has five; a score with more nameless parts has other instruments too. Chosen, not measured. */
const MOST_NAMELESS = 5;
/** Lowest written note, as a MIDI key, and the clefs a part begins with. Common practice, no source. */
const RANGES: { instrument: InstrumentName; clef: RegExp; lowest: number; highest: number }[] = [
  { instrument: 'violin', clef: /^G2$/, lowest: 55, highest: 105 },
  { instrument: 'viola', clef: /^(C3|G2)$/, lowest: 48, highest: 95 },
  { instrument: 'cello', clef: /^(F4|C4)$/, lowest: 36, highest: 84 },
];

/**
 * The parts of a score with a guess at the instrument of those whose names say nothing: by the clef they begin with and the notes they have. A score in which
 * any part is named as a bowed string keeps what its names say, and so does one with more nameless parts than a string orchestra has.
 * @returns parts in the same order. Example: a nameless part in the alto clef that goes down to C3 (MIDI 48) and no lower is "viola".
 */
export function guessInstruments(read: readonly ReadPart[]): Part[] {
  const parts = read.map(({ part }) => part);
  const nameless = read.filter(({ part, source }) => part.instrument === null && SAYS_NOTHING.test(part.name) && !saysSound(source.listed));
  if (parts.some(({ instrument }) => instrument !== null) || nameless.length === 0 || nameless.length > MOST_NAMELESS) return parts;
  return read.map((one) => (nameless.includes(one) ? { ...one.part, instrument: guess(one) } : one.part));
}

function saysSound(listed: XmlElement | undefined): boolean {
  return Boolean(listed && childrenNamed(listed, 'score-instrument').some((instrument) => textOf(instrument, 'instrument-sound') || !SAYS_NOTHING.test(textOf(instrument, 'instrument-name') ?? '')));
}

function guess({ part, source }: ReadPart): InstrumentName | null {
  const contents = source.measures.flatMap(({ content }) => content ?? []);
  const notes = part.measures.flatMap((measure) => measure.notes);
  const sung = contents.some((content) => childrenNamed(content, 'note').some((note) => childrenNamed(note, 'lyric').length));
  const keys = notes.flatMap(({ midi }) => midi ?? []);
  const clef = clefOf(contents);
  if (sung || keys.length === 0 || notes.some(({ staff, rest, midi }) => (staff ?? 1) > 1 || (!rest && midi === undefined))) return null;
  const [lowest, highest] = [Math.min(...keys), Math.max(...keys)];
  if (clef === 'F4' && part.transposition === -12 && lowest >= 36) return 'double-bass';
  return part.transposition === 0 ? (RANGES.find((range) => range.clef.test(clef) && lowest >= range.lowest && highest <= range.highest)?.instrument ?? null) : null;
}

/** Sign and line of the first clef, "G2" where there is none. */
function clefOf(contents: readonly XmlElement[]): string {
  for (const content of contents) {
    for (const attributes of childrenNamed(content, 'attributes')) {
      const [clef] = childrenNamed(attributes, 'clef');
      if (clef) return `${textOf(clef, 'sign') ?? ''}${textOf(clef, 'line') ?? ''}${Number(textOf(clef, 'clef-octave-change') ?? 0) ? ' octave' : ''}`;
    }
  }
  return 'G2';
}
