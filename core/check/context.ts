import { type BowEvent, bowEvents, type Voice } from '../bowing/events.ts';
import { staggeredPassages, type StaggeredPassage } from '../bowing/passages.ts';
import { type Stroke, strokesOf } from '../bowing/strokes.ts';
import { strokesLike } from '../bowing/strokesLike.ts';
import type { Instrument } from '../instruments/instrument.ts';
import { instrumentNamed, withLowestString } from '../instruments/instrumentNamed.ts';
import type { Mark } from '../music/mark.ts';
import type { Measure, Part, StringPart } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { type TempoMap, tempoMap } from '../music/seconds.ts';
import type { OtherSection } from './finding.ts';
import { type SeatGroup, seatMarks } from './seatMarks.ts';
import type { CheckSettings } from './settings.ts';

/** Seats that see the same marks, and the bows that follow from them, voice by voice. */
export interface Players extends SeatGroup {
  strokes: readonly Stroke[][];
}

/** What of a part no mark changes. */
export interface PartMusic {
  part: Part;
  instrument: Instrument;
  settings: CheckSettings;
  tempo: TempoMap;
  /** The measures looked at, and the voices in them: the whole part, or a stretch of it. */
  measures: readonly Measure[];
  voices: readonly Voice[];
}

/** What all rules share, worked out once. Rules go over `measures` and `voices`, and ask `part` only for what a word or sign says from far away. */
export interface CheckContext extends PartMusic {
  seats: readonly SeatId[];
  groups: readonly Players[];
  /** The bows as printed, by voice: nobody's marks counted. */
  printed: readonly Stroke[][];
  /** Where players change bow at different places. */
  staggered: readonly StaggeredPassage[];
}

/** A part as marked for all of its section, and what stands beside it: for rules that compare whole parts. */
export interface SectionContext extends PartMusic {
  /** The bows as marked for the whole section, by voice, and as printed. */
  common: readonly Stroke[][];
  printed: readonly Stroke[][];
  others: readonly OtherSection[];
}

/** Sounding MIDI key of the event's head; undefined where it has no pitch. */
export const soundingOf = (event: BowEvent): number | undefined => event.head.sounding ?? event.head.midi;

/** Reads a part as rules see it before anything is marked. */
export function partMusic(part: StringPart, settings: CheckSettings): PartMusic {
  const plain = instrumentNamed(part.instrument);
  const instrument = settings.lowestString === null ? plain : withLowestString(plain, settings.lowestString);
  const tempo = tempoMap(part, settings.assumedTempo);
  return { part, instrument, settings, tempo, measures: part.measures, voices: bowEvents(part, tempo) };
}

/** The marks laid over the music. Cost grows with the notes, and with the marks that only some seats have. */
export function markedMusic(music: PartMusic, seats: readonly SeatId[], marks: readonly Mark[]): CheckContext {
  const { measures, voices } = music;
  const printedOn = seatMarks({ measures }, [], []).forAll;
  const printed = voices.map((voice) => strokesOf(voice, printedOn));
  const { forAll, groups: bySeat } = seatMarks({ measures }, marks, seats);
  const common = marks.length ? voices.map((voice) => strokesOf(voice, forAll)) : printed;
  const groups = bySeat.map((group): Players => {
    if (!group.own.size) return { ...group, strokes: common };
    const strokes = voices.map((voice, index) => strokesLike(common[index]!, voice, group.marksOn, voice.flatMap((event, place) => (group.own.has(event.head.id) ? [place] : []))));
    return { ...group, strokes };
  });
  return { ...music, seats, groups, printed, staggered: staggeredPassages(voices, printed, groups) };
}

/** What the rules need of a whole part as marked. */
export function checkContext(part: StringPart, seats: readonly SeatId[], marks: readonly Mark[], settings: CheckSettings): CheckContext {
  return markedMusic(partMusic(part, settings), seats, marks);
}
