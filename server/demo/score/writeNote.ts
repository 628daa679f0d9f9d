import type { Pitch } from '../../../core/music/pitch.ts';
import type { Accidentals } from './accidentals.ts';
import type { Beams } from './beams.ts';
import type { WrittenNote } from './notation.ts';
import { element } from './xml.ts';

const ARTICULATIONS: Record<string, string> = { "'": 'staccato', '>': 'accent' };
const TECHNICAL: Record<string, string> = { n: 'down-bow', v: 'up-bow' };

/** What a voice remembers from note to note. */
export interface VoiceMemory {
  number: number;
  /** Written pitches whose tie is still open. */
  ties: Set<string>;
  accidentals: Accidentals;
}

const keyOf = (pitch: Pitch): string => `${pitch.step}${pitch.alter}${pitch.octave}`;
const pitchElement = ({ step, alter, octave }: Pitch): string =>
  element('pitch', element('step', step) + (alter === 0 ? '' : element('alter', alter)) + element('octave', octave));

function notations(note: WrittenNote, first: boolean, last: boolean, tied: string[], voice: number, triplet: string | null): string {
  const groups = [tied.map((type) => element('tied', '', { type })).join('')];
  if (first) {
    if (note.signs.includes(')')) groups.push(element('slur', '', { type: 'stop', number: voice }));
    if (note.signs.includes('(')) groups.push(element('slur', '', { type: 'start', number: voice }));
    if (triplet !== null) groups.push(element('tuplet', '', { type: triplet, number: 1 }));
    const technical = note.signs.flatMap((sign) => (TECHNICAL[sign] === undefined ? [] : [element(TECHNICAL[sign], '', { placement: 'above' })])).join('');
    const fingering = note.finger === null ? '' : element('fingering', note.finger);
    if (technical + fingering !== '') groups.push(element('technical', technical + fingering));
    const articulations = note.signs.flatMap((sign) => (ARTICULATIONS[sign] === undefined ? [] : [element(ARTICULATIONS[sign])])).join('');
    if (articulations !== '') groups.push(element('articulations', articulations));
  }
  if (last && note.signs.includes('^')) groups.push(element('fermata'));
  const content = groups.join('');
  return content === '' ? '' : element('notations', content);
}

/** The note elements of one written note or chord, with the accidentals and ties its voice needs. */
export function writeNote(note: WrittenNote, beams: Beams, triplet: string | null, voice: VoiceMemory): string {
  const { pitches } = note;
  const rhythm = (tieElements: string, accidental: string, beamElements: string): string =>
    element('duration', note.ticks) + tieElements + element('voice', voice.number) + element('type', note.type) + (note.dotted ? element('dot') : '') + accidental
    + (note.triplet ? element('time-modification', element('actual-notes', 3) + element('normal-notes', 2)) : '') + beamElements;
  if (pitches.length === 0) return element('note', element('rest') + rhythm('', '', ''));
  return pitches.map((pitch, i) => {
    const key = keyOf(pitch);
    const tied = [...(voice.ties.delete(key) ? ['stop'] : []), ...(note.signs.includes('~') ? ['start'] : [])];
    if (tied.includes('start')) voice.ties.add(key);
    const accidental = voice.accidentals.before(pitch, tied.includes('stop'));
    const beamElements = i === 0 ? (beams ?? []).map((value, k) => element('beam', value, { number: k + 1 })).join('') : '';
    return element('note', (i > 0 ? element('chord') : '') + pitchElement(pitch)
      + rhythm(tied.map((type) => element('tie', '', { type })).join(''), accidental === null ? '' : element('accidental', accidental), beamElements)
      + notations(note, i === 0, i === pitches.length - 1, tied, voice.number, triplet));
  }).join('\n      ');
}
