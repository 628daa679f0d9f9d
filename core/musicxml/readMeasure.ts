import { compareTimes, type ExactTime, minus, plus } from '../music/time.ts';
import { applyAttributes, type Standing } from './attributes.ts';
import { type Said, nothingSaid, readDirection, readSound } from './directions.ts';
import { levelOf } from './dynamics.ts';
import { child, childrenNamed, textOf, type XmlElement } from './element.ts';
import { failAt, numberIn, type Place } from './place.ts';
import { ratio } from './ratio.ts';
import { type RawNote, readNote } from './readNote.ts';
import { soundTempo } from './tempo.ts';

export interface RawMeasure {
  notes: RawNote[];
  /** The `<note>` elements, as many as `notes` and in their order. */
  elements: XmlElement[];
  said: Said;
  /** Quarters to the furthest point reached. */
  length: ExactTime;
}

/**
 * Reads the notes and directions of one measure at their exact times.
 * A backup past the start of the measure goes to the start, as notation programs read it; a chord member without a note before it starts where the
 * measure stands. Stops reading at a length that is negative or no number and at a sounding note without one.
 */
export function readMeasure(content: XmlElement, standing: Standing, place: Place): RawMeasure {
  const measure: RawMeasure = { notes: [], elements: [], said: nothingSaid(), length: 0 };
  let now: ExactTime = 0;
  let chordStart: ExactTime = 0;
  const quarters = (element: XmlElement): ExactTime => {
    const value = numberIn(place, element);
    if (value < 0) failAt(place, element, 'NEGATIVE_DURATION', `a length of ${value} points backwards. Correct the rhythm there and export again.`);
    return ratio(value, standing.divisions);
  };
  const reach = (time: ExactTime) => {
    if (compareTimes(time, measure.length) > 0) measure.length = time;
  };
  for (const element of content.children) {
    if (element.name === 'note') {
      const chord = child(element, 'chord') !== undefined;
      const grace = child(element, 'grace') !== undefined;
      const written = child(element, 'duration');
      if (!written && !grace) failAt(place, element, 'NO_DURATION', 'a note has no duration. Correct the note in the score and export again.');
      const duration = grace || !written ? 0 : quarters(written);
      if (!chord) chordStart = now;
      const transpose = standing.transpose.get(textOf(element, 'staff') ?? '') ?? standing.transpose.get('') ?? 0;
      measure.notes.push(readNote(element, chordStart, duration, transpose, place));
      measure.elements.push(element);
      for (const notations of childrenNamed(element, 'notations')) for (const dynamics of childrenNamed(notations, 'dynamics')) addDynamics(dynamics, chordStart, measure.said);
      if (!chord) now = plus(now, duration);
      reach(plus(chordStart, duration));
    } else if (element.name === 'backup' || element.name === 'forward') {
      const duration = child(element, 'duration');
      if (!duration) failAt(place, element, 'NO_DURATION', `a <${element.name}> has no duration. Export the score again.`);
      const distance = quarters(duration);
      now = element.name === 'forward' ? plus(now, distance) : compareTimes(distance, now) > 0 ? 0 : minus(now, distance);
      reach(now);
    } else if (element.name === 'attributes') {
      applyAttributes(element, standing, place);
    } else if (element.name === 'direction') {
      readDirection(element, shifted(element, now, standing, place), measure.said);
    } else if (element.name === 'sound') {
      const at = shifted(element, now, standing, place);
      const tempo = soundTempo(element);
      if (tempo) measure.said.tempos.push({ at, value: tempo });
      readSound(element, at, measure.said);
    }
  }
  return measure;
}

function addDynamics(dynamics: XmlElement, at: ExactTime, said: Said): void {
  const value = levelOf(dynamics);
  if (value) said.dynamics.push({ at, value });
}

/** A direction's time: where it stands plus its offset, not before the measure. */
function shifted(element: XmlElement, now: ExactTime, standing: Standing, place: Place): ExactTime {
  const offset = child(element, 'offset');
  if (!offset) return now;
  const time = plus(now, ratio(numberIn(place, offset), standing.divisions));
  return compareTimes(time, 0) < 0 ? 0 : time;
}
