import type { Measure } from '../music/part.ts';
import { child, childrenNamed, textOf, type XmlElement } from './element.ts';
import { failAt, numberIn, type Place } from './place.ts';

/** What `<attributes>` sets and later measures inherit. */
export interface Standing {
  divisions: number;
  time: Measure['time'];
  fifths: number | null;
  /** Semitones from written to sounding, by staff; "" for all staves. */
  transpose: Map<string, number>;
}

/** Takes over what one `<attributes>` changes. Stops reading at divisions that are not above zero. */
export function applyAttributes(attributes: XmlElement, standing: Standing, place: Place): void {
  const divisions = child(attributes, 'divisions');
  if (divisions) {
    const value = numberIn(place, divisions);
    if (value <= 0) failAt(place, divisions, 'BAD_DIVISIONS', `<divisions> is ${value}; it has to be above 0, or no note has a length. Export the score again.`);
    standing.divisions = value;
  }
  const key = child(attributes, 'key');
  const fifths = key && child(key, 'fifths');
  if (fifths) standing.fifths = numberIn(place, fifths);
  const time = child(attributes, 'time');
  if (time) standing.time = timeOf(time);
  for (const transpose of childrenNamed(attributes, 'transpose')) {
    const chromatic = child(transpose, 'chromatic');
    const octaves = child(transpose, 'octave-change');
    standing.transpose.set(transpose.attributes.number ?? '', (chromatic ? numberIn(place, chromatic) : 0) + 12 * (octaves ? numberIn(place, octaves) : 0));
  }
}

function timeOf(time: XmlElement): Measure['time'] {
  const beats = childrenNamed(time, 'beats').map((element) => element.text.trim());
  const beatType = textOf(time, 'beat-type');
  if (!beats.length || beatType === undefined) return null;
  const types = childrenNamed(time, 'beat-type').map((element) => element.text.trim());
  const uniform = types.every((type) => type === beatType);
  return uniform ? { beats: beats.join('+'), beatType } : { beats: beats.map((beat, i) => `${beat}/${types[i] ?? beatType}`).join('+'), beatType };
}

const QUARTERS: Record<string, number> = { maxima: 32, long: 16, breve: 8, whole: 4, half: 2, quarter: 1, eighth: 1 / 2, '16th': 1 / 4, '32nd': 1 / 8, '64th': 1 / 16, '128th': 1 / 32, '256th': 1 / 64 };

/** Quarters of a notated value with its dots; undefined for a name that is none. Example: `valueOf("half", 1)` is 3. */
export function valueOf(type: string, dots: number): number | undefined {
  const plain = QUARTERS[type];
  return plain === undefined ? undefined : plain * (2 - 2 ** -dots);
}

/**
 * Divisions for a part that never says: what makes the first note with a notated value as long as it looks; 1 where no note has one.
 * Excerpts are often written so, and refusing them would help nobody. Our own reading, no source.
 */
export function inferredDivisions(contents: readonly XmlElement[]): number {
  for (const content of contents) {
    for (const note of childrenNamed(content, 'note')) {
      const duration = Number(textOf(note, 'duration'));
      const modification = child(note, 'time-modification');
      const tuplet = modification ? Number(textOf(modification, 'normal-notes')) / Number(textOf(modification, 'actual-notes')) : 1;
      const value = (valueOf(textOf(note, 'type') ?? '', childrenNamed(note, 'dot').length) ?? 0) * tuplet;
      if (duration > 0 && value > 0 && Number.isFinite(duration / value)) return Number((duration / value).toFixed(6));
    }
  }
  return 1;
}
