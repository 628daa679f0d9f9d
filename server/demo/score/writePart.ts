import { Accidentals } from './accidentals.ts';
import { beamsOf } from './beams.ts';
import { Directions, landmarkDirections } from './directions.ts';
import { DIVISIONS, readNotation, type Entry, type WrittenMeasure, type WrittenNote } from './notation.ts';
import { FIFTHS, LANDMARKS, type PlannedPart } from './plan.ts';
import { element } from './xml.ts';
import { writeNote, type VoiceMemory } from './writeNote.ts';

type Time = [beats: number, beatType: number];

const notesOf = (voice: Entry[]): WrittenNote[] => voice.flatMap((entry) => (entry.kind === 'note' ? [entry.note] : []));
const ticksOf = (voice: Entry[]): number => notesOf(voice).reduce((sum, note) => sum + note.ticks, 0);
const measureTicks = ([beats, beatType]: Time): number => (beats * DIVISIONS * 4) / beatType;

function attributes(part: PlannedPart, first: boolean, time: Time | undefined): string {
  if (!first && time === undefined) return '';
  const [sign, line] = part.clef;
  return element('attributes', [
    first ? element('divisions', DIVISIONS) + element('key', element('fifths', FIFTHS) + element('mode', 'major')) : '',
    time === undefined ? '' : element('time', element('beats', time[0]) + element('beat-type', time[1])),
    first ? element('clef', element('sign', sign) + element('line', line)) : '',
    first && part.octaves !== 0 ? element('transpose', element('diatonic', 0) + element('chromatic', 0) + element('octave-change', part.octaves)) : '',
  ].join(''));
}

/** Triplets come in threes: the first begins the bracket, the third ends it. */
function tripletRoles(notes: WrittenNote[]): (string | null)[] {
  let count = 0;
  return notes.map((note) => (note.triplet ? ([ 'start', null, 'stop' ] as const)[count++ % 3]! : null));
}

function writeVoice(voice: Entry[], group: number, offset: number, memory: VoiceMemory, directions: Directions): string[] {
  const notes = notesOf(voice);
  const beams = beamsOf(notes, group, offset);
  const triplets = tripletRoles(notes);
  let i = -1;
  return voice.map((entry) => {
    if (entry.kind === 'direction') return directions.write(entry.text);
    i += 1;
    return writeNote(entry.note, beams[i]!, triplets[i]!, memory);
  });
}

/** A whole part. Throws when a measure does not add up: the text is ours, so that is a bug. */
export function writePart(part: PlannedPart): string {
  const directions = new Directions();
  const accidentals = new Accidentals(FIFTHS);
  const memories: VoiceMemory[] = [1, 2].map((number) => ({ number, ties: new Set(), accidentals }));
  const measures = readNotation(part.music);
  let time: Time = [4, 4];
  const write = (measure: WrittenMeasure, i: number): string => {
    const landmark = LANDMARKS[measure.number] ?? {};
    time = landmark.time ?? time;
    const upbeat = measure.number === '0';
    const full = measureTicks(time);
    const lengths = measure.voices.map(ticksOf);
    if (!upbeat && lengths.some((length) => length !== full)) throw new Error(`${part.name}, measure ${measure.number}: ${lengths.join(' and ')} ticks instead of ${full}`);
    accidentals.newMeasure();
    // Eighths in common time go under one beam by halves of the measure, but finer notes by the beat.
    const fine = measure.voices.flatMap(notesOf).some((note) => note.type === '16th' || note.triplet);
    const group = time[1] === 8 ? DIVISIONS * 1.5 : fine ? DIVISIONS : DIVISIONS * 2;
    const next = LANDMARKS[String(Number(measure.number) + 1)];
    const lines = [
      attributes(part, i === 0, landmark.time),
      landmarkDirections(landmark),
      ...measure.voices.flatMap((voice, v) => [
        v === 0 ? '' : element('backup', element('duration', lengths[0]!)),
        ...writeVoice(voice, group, upbeat ? full - lengths[0]! : 0, memories[v]!, directions),
      ]),
      i === measures.length - 1 ? element('barline', element('bar-style', 'light-heavy'), { location: 'right' })
        : next?.doubleBarBefore ? element('barline', element('bar-style', 'light-light'), { location: 'right' }) : '',
    ].filter((line) => line !== '');
    return element('measure', `\n      ${lines.join('\n      ')}\n    `, upbeat ? { number: 0, implicit: 'yes' } : { number: measure.number });
  };
  return element('part', `\n    ${measures.map(write).join('\n    ')}\n  `, { id: part.id });
}
