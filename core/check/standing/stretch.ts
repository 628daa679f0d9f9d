import type { BowEvent, Voice } from '../../bowing/events.ts';
import type { Mark } from '../../music/mark.ts';
import { firstIndex } from '../../music/firstIndex.ts';
import type { Stretch } from '../../music/stretches.ts';
import type { PartMusic } from '../context.ts';
import type { CheckSettings } from '../settings.ts';

/** Notes a rule may look away from where it reports; see `Rule.check`. */
const NOTES_AWAY = 24;
/** Bows beside those that are counted between two signs: the two themselves and what stands before. */
const BOWS_MORE = 3;
/** Seconds; a longer silence ends a bow for certain. */
const GAP = 1e-3;
/** Seconds of silence in a voice after which neither hand nor bow remembers what was before. Chosen, not measured. */
const SILENCE = 4;

/** First event of a voice in measure `ordinal` or after it. */
export function firstIn(voice: Voice, ordinal: number): number {
  return firstIndex(voice.length, (at) => voice[at]!.measure >= ordinal);
}

/** Marks by note, of one reading of the part or more. */
type Marked = readonly ReadonlyMap<string, readonly Mark[]>[];

const joins = ({ head: { id, technical } }: BowEvent, marked: Marked): boolean =>
  technical.length > 0 || marked.some((onNote) => (onNote.get(id) ?? []).some(({ value }) => value.kind === 'hooked' || (value.kind === 'slur' && value.slur === 'join')));

/** True where one bow may go on from the event before, for anybody: by print, or by a mark on either side. Never before the first or after the last. */
function mayHold(voice: Voice, at: number, marked: Marked): boolean {
  const [before, event] = [voice[at - 1], voice[at]];
  if (!before || !event) return false;
  return event.bound || (event.start - before.end < GAP && (joins(event, marked) || joins(before, marked)));
}

/** The index, towards `step`, at which enough music lies between. */
function away(voice: Voice, start: number, step: 1 | -1, { strokesCounted, retakeRest }: CheckSettings, marked: Marked): number {
  const [bows, silence] = [strokesCounted + BOWS_MORE, Math.max(SILENCE, retakeRest)];
  let [at, notes, begun] = [start, 0, 0];
  const edge = (): number => (step === 1 ? at + 1 : at);
  while (step === 1 ? at < voice.length - 1 : at > 0) {
    const held = mayHold(voice, edge(), marked);
    if ((notes >= NOTES_AWAY && begun >= bows && !held) || voice[edge()]!.start - voice[edge() - 1]!.end > silence) break;
    if (!held) begun += 1;
    notes += 1;
    at += step;
  }
  return at;
}

/**
 * The stretch widened on both sides by as much music as a rule may look away: in every voice that sounds in it two dozen notes and
 * the bows that are counted, or as far as a long silence, and no bow cut in two. In whole measures. Invariant: contains the stretch. Example: a held note of forty measures is taken whole.
 */
export function widened({ from, to }: Stretch, { voices, measures, settings }: PartMusic, marked: Marked): Stretch {
  let [first, last] = [from, to];
  for (const voice of voices) {
    const [begin, end] = [firstIn(voice, from), firstIn(voice, to + 1)];
    if (begin === end) continue;
    first = Math.min(first, voice[away(voice, begin, -1, settings, marked)]!.measure);
    last = Math.max(last, voice[away(voice, end - 1, 1, settings, marked)]!.measure);
  }
  // Whole measures may reach into a bow of another voice: widen until nothing is cut.
  for (let cut = true; cut; ) {
    cut = false;
    for (const voice of voices) {
      const [at, end] = [firstIn(voice, first), firstIn(voice, last + 1)];
      if (mayHold(voice, at, marked)) [first, cut] = [voice[at - 1]!.measure, true];
      if (mayHold(voice, end, marked)) [last, cut] = [voice[end]!.measure, true];
    }
  }
  return { from: Math.max(1, first), to: Math.min(measures.length, last) };
}

/** The music of some measures alone. Voices that are silent there stay, empty, so that their numbers hold. */
export function musicOf(music: PartMusic, { from, to }: Stretch): PartMusic {
  return { ...music, measures: music.measures.slice(from - 1, to), voices: music.voices.map((voice) => voice.slice(firstIn(voice, from), firstIn(voice, to + 1))) };
}
