import { numberAt } from '../../../music/printedNumber.ts';
import type { Measure } from '../../../music/part.ts';
import type { BowEvent, Voice } from '../../events.ts';
import { isTremolo, type Stroke } from '../../strokes.ts';

/** Events of one voice that are to be played as one line without a common bow change. */
export interface Stretch {
  voice: number;
  /** Indexes of its first and last event. */
  from: number;
  to: number;
}

/** Why a passage cannot be staggered, for whoever asked. */
export interface StretchRefusal {
  code: 'NOT_ONE_VOICE' | 'REST_INSIDE' | 'PLUCKED_INSIDE' | 'TREMOLO_INSIDE' | 'SEPARATE_BOWS';
  /** Ordinal of the measure it is about. */
  measure: number;
  text: string;
}

/** Bows as written that are shorter than this are meant to be heard one by one; chosen, not measured. */
const SHORTEST_OF_CHAIN = 1;
const TOUCHING = 1e-6;

const voiceWith = (voices: readonly Voice[], first: string, last: string): number =>
  voices.findIndex((voice) => [first, last].every((id) => voice.some(({ notes }) => notes.some((note) => note.id === id))));

const indexOf = (voice: Voice, id: string): number => voice.findIndex(({ notes }) => notes.some((note) => note.id === id));

/** Whether the bow that plays an event goes on to the next one as printed. */
const goesOn = (voice: Voice, event: number): boolean => voice[event + 1]?.bound === true;

function refusalIn(voice: Voice, { from, to }: Stretch, printed: readonly Stroke[], named: (event: BowEvent) => string): StretchRefusal | undefined {
  for (let e = from; e <= to; e++) {
    const event = voice[e]!;
    const [measure, where] = [event.measure, named(event)];
    if (event.head.pizzicato) return { code: 'PLUCKED_INSIDE', measure, text: `Measure ${where} is plucked: no bow to share there. Choose the bowed measures only.` };
    if (isTremolo(event.head)) return { code: 'TREMOLO_INSIDE', measure, text: `Measure ${where} is a tremolo: everybody changes bow all the time. Choose the held notes only.` };
    if (e > from && event.start - voice[e - 1]!.end > TOUCHING) return { code: 'REST_INSIDE', measure, text: `Before the note in measure ${where} there is a rest, where everybody takes a new bow. Choose the measures before it or after it.` };
  }
  const inside = printed.filter(({ begins, lastEvent }) => begins.event >= from && lastEvent <= to);
  const short = inside.length > 1 ? inside.find(({ begins, end }) => end - begins.second < SHORTEST_OF_CHAIN) : undefined;
  if (!short) return undefined;
  const event = voice[short.begins.event]!;
  return { code: 'SEPARATE_BOWS', measure: event.measure, text: `In measure ${named(event)} there are short bows of their own. Choose slurs and held notes that run on into each other.` };
}

/**
 * The stretch from one note to another, widened to whole bows as printed: a long slur, a tied note, or slurs and held notes that follow each other without a rest.
 * Refuses what cannot be one line: a rest, plucked notes, a tremolo or short bows inside, or notes of two voices.
 * @param printed bows as printed, voice by voice
 * Example: two notes in the middle of a slur give all of the slur.
 */
export function stretchOf(voices: readonly Voice[], printed: readonly (readonly Stroke[])[], measures: readonly Measure[], first: string, last: string): { stretch: Stretch } | { refusal: StretchRefusal } {
  const index = voiceWith(voices, first, last);
  const voice = voices[index];
  if (!voice) return { refusal: { code: 'NOT_ONE_VOICE', measure: 1, text: 'The first and the last note are not played by one voice. Choose both in the same line of the part.' } };
  let [from, to] = [indexOf(voice, first), indexOf(voice, last)].sort((a, b) => a - b) as [number, number];
  while (from > 0 && goesOn(voice, from - 1)) from--;
  while (goesOn(voice, to)) to++;
  const stretch = { voice: index, from, to };
  const refusal = refusalIn(voice, stretch, printed[index]!, ({ measure }) => numberAt({ measures }, measure));
  return refusal ? { refusal } : { stretch };
}
