import { valueOf } from './attributes.ts';
import { childrenNamed, textOf, type XmlElement } from './element.ts';

/** A tempo by itself, or relative to the one before it. */
export type Tempo = { quarters: number } | { factor: number };

/** Slower or faster than any music; such figures are playback tricks or slips. Chosen, not measured. */
const SLOWEST = 5;
const FASTEST = 1000;

const possible = (quarters: number): Tempo | undefined => (quarters >= SLOWEST && quarters <= FASTEST ? { quarters } : undefined);

/** Tempo of `<sound tempo="...">` in quarter notes per minute (MusicXML 4.0, sound). */
export function soundTempo(sound: XmlElement): Tempo | undefined {
  return sound.attributes.tempo === undefined ? undefined : possible(Number(sound.attributes.tempo));
}

/**
 * Tempo of a `<metronome>` in quarter notes per minute: "half = 60" is 120; of "c. 108-112" the first figure counts; "quarter = dotted quarter"
 * is a factor on the tempo before. Undefined where no figure can be read.
 */
export function metronomeTempo(metronome: XmlElement): Tempo | undefined {
  const units = unitsOf(metronome);
  const [first, second] = units;
  if (first === undefined) return undefined;
  const figure = textOf(metronome, 'per-minute')?.match(/\d+([.,]\d+)?/)?.[0];
  if (figure !== undefined) return possible(Number(figure.replace(',', '.')) * first);
  return second === undefined ? undefined : { factor: second / first };
}

function addDot(unit: { dots: number } | undefined): void {
  if (unit) unit.dots++;
}

function unitsOf(metronome: XmlElement): number[] {
  const units: { type: string; dots: number }[] = [];
  for (const part of metronome.children) {
    if (part.name === 'beat-unit') units.push({ type: part.text.trim(), dots: 0 });
    else if (part.name === 'beat-unit-dot') addDot(units.at(-1));
  }
  return units.flatMap(({ type, dots }) => valueOf(type, dots) ?? []);
}

/** Tempo of a `<direction>`: its sound says it best, else its metronome. */
export function directionTempo(direction: XmlElement): Tempo | undefined {
  for (const sound of childrenNamed(direction, 'sound')) {
    const tempo = soundTempo(sound);
    if (tempo) return tempo;
  }
  for (const type of childrenNamed(direction, 'direction-type')) {
    for (const metronome of childrenNamed(type, 'metronome')) {
      const tempo = metronomeTempo(metronome);
      if (tempo) return tempo;
    }
  }
  return undefined;
}
