import { type BowEvent, bowEvents, type Voice } from '../bowing/events.ts';
import { staggeredPassages, type StaggeredPassage } from '../bowing/passages.ts';
import { type Stroke, strokesOf } from '../bowing/strokes.ts';
import { strokesLike } from '../bowing/strokesLike.ts';
import type { Instrument } from '../instruments/instrument.ts';
import { instrumentNamed, withLowestString } from '../instruments/instrumentNamed.ts';
import type { Mark } from '../music/mark.ts';
import type { InstrumentName, Part } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { type TempoMap, tempoMap } from '../music/seconds.ts';
import type { OtherSection } from './finding.ts';
import { type SeatGroup, seatMarks } from './seatMarks.ts';
import type { CheckSettings } from './settings.ts';

/** Seats that see the same marks, and the bows that follow from them, voice by voice. */
export interface Players extends SeatGroup {
  strokes: readonly Stroke[][];
}

/** What all rules share, worked out once. */
export interface CheckContext {
  part: Part;
  instrument: Instrument;
  settings: CheckSettings;
  seats: readonly SeatId[];
  tempo: TempoMap;
  voices: readonly Voice[];
  groups: readonly Players[];
  /** The bows as marked for the whole section, by voice. */
  common: readonly Stroke[][];
  /** The bows as printed, by voice: nobody's marks counted. */
  printed: readonly Stroke[][];
  /** Where players change bow at different places. */
  staggered: readonly StaggeredPassage[];
  others: readonly OtherSection[];
}

/** Sounding MIDI key of the event's head; undefined where it has no pitch. */
export const soundingOf = (event: BowEvent): number | undefined => event.head.sounding ?? event.head.midi;

/** Gathers what the rules need. Cost grows with the notes, and with the marks that only some seats have. */
export function checkContext(part: Part & { instrument: InstrumentName }, seats: readonly SeatId[], marks: readonly Mark[], settings: CheckSettings, others: readonly OtherSection[] = []): CheckContext {
  const plain = instrumentNamed(part.instrument);
  const instrument = settings.lowestString === null ? plain : withLowestString(plain, settings.lowestString);
  const tempo = tempoMap(part, settings.assumedTempo);
  const voices = bowEvents(part, tempo);
  const printedOn = seatMarks(part, [], []).forAll;
  const printed = voices.map((voice) => strokesOf(voice, printedOn));
  const { forAll, groups: bySeat } = seatMarks(part, marks, seats);
  const common = marks.length ? voices.map((voice) => strokesOf(voice, forAll)) : printed;
  const groups = bySeat.map((group): Players => {
    if (!group.own.size) return { ...group, strokes: common };
    const strokes = voices.map((voice, index) => strokesLike(common[index]!, voice, group.marksOn, voice.flatMap((event, place) => (group.own.has(event.head.id) ? [place] : []))));
    return { ...group, strokes };
  });
  return { part, instrument, settings, seats, tempo, voices, groups, common, printed, staggered: staggeredPassages(voices, printed, groups), others };
}
