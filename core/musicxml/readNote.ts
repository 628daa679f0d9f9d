import { midiOf, type Pitch } from '../music/pitch.ts';
import type { Note } from '../music/part.ts';
import type { ExactTime } from '../music/time.ts';
import { child, isHidden, textOf, type XmlElement } from './element.ts';
import { readNotations } from './notations.ts';
import { failAt, numberIn, type Place } from './place.ts';

/** A note before it has its id, its index and what is in force at its time. */
export type RawNote = Omit<Note, 'id' | 'index' | 'dynamic' | 'tempo' | 'pizzicato'>;

/**
 * Reads one `<note>`.
 * @param onset quarters from the start of the measure
 * @param duration quarters; 0 for grace notes
 * @param transpose semitones from written to sounding
 * Stops reading at a note that is neither rest, pitched nor unpitched, and at a pitch without step or octave.
 */
export function readNote(element: XmlElement, onset: ExactTime, duration: ExactTime, transpose: number, place: Place): RawNote {
  const pitchElement = child(element, 'pitch');
  const rest = child(element, 'rest') !== undefined;
  if (!pitchElement && !rest && !child(element, 'unpitched')) {
    failAt(place, element, 'NO_PITCH', 'a note has neither pitch nor rest. Enter its pitch in the score and export again.');
  }
  const pitch = pitchElement && readPitch(pitchElement, place);
  const staff = Number(textOf(element, 'staff') ?? NaN);
  const type = textOf(element, 'type');
  return {
    ...(rest ? { rest: true } : {}),
    ...(child(element, 'grace') ? { grace: true } : {}),
    ...(child(element, 'chord') ? { chord: true } : {}),
    ...(isHidden(element) ? { hidden: true } : {}),
    ...(child(element, 'cue') ? { cue: true } : {}),
    ...(pitch ? { pitch, midi: midiOf(pitch) } : {}),
    ...(pitch && transpose ? { sounding: midiOf(pitch) + transpose } : {}),
    onset,
    duration,
    voice: textOf(element, 'voice') || '1',
    ...(Number.isInteger(staff) ? { staff } : {}),
    ...(type ? { type } : {}),
    ...readNotations(element),
  };
}

function readPitch(element: XmlElement, place: Place): Pitch {
  const step = textOf(element, 'step') ?? '';
  if (!/^[A-G]$/.test(step)) failAt(place, element, 'BAD_PITCH', `a pitch has no letter from A to G${step ? ` but "${step.slice(0, 20)}"` : ''}. Correct the note in the score and export again.`);
  const octaveElement = child(element, 'octave');
  const octave = octaveElement ? numberIn(place, octaveElement) : NaN;
  if (!Number.isInteger(octave) || octave < -1 || octave > 10) failAt(place, element, 'BAD_PITCH', 'a pitch has no octave from 0 to 9. Correct the note in the score and export again.');
  const alterElement = child(element, 'alter');
  const alter = alterElement?.text.trim() ? numberIn(place, alterElement) : 0;
  if (Math.abs(alter) > 12) failAt(place, element, 'BAD_PITCH', `a pitch is altered by ${alter} semitones. Correct the note in the score and export again.`);
  return { step: step as Pitch['step'], alter, octave };
}
