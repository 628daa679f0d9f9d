import type { Pitch } from './pitch.ts';
import type { ExactTime } from './time.ts';

export type InstrumentName = 'violin' | 'viola' | 'cello' | 'double-bass';

/** A mark printed in the source: MusicXML `technical` child, by its element name. */
export interface TechnicalMark {
  /** Element name as in MusicXML: `fingering`, `string`, `up-bow`, `down-bow`, `open-string`, `harmonic`, `thumb-position`, `other-technical` ... */
  name: string;
  /** Text of the element, untouched ("2", "2\n1", "" for an empty element). */
  value?: string;
  /** Attributes and child element names that carry meaning, e.g. `substitution`, `smufl`, `artificial`. */
  detail?: Record<string, string>;
  /** Inside `notations print-object="no"`: kept, not shown. */
  hidden?: true;
}

export interface Note {
  /** Stable over re-import of the same or a corrected file. */
  id: string;
  rest?: true;
  grace?: true;
  /** Sounds together with the note before it in document order. */
  chord?: true;
  /** `print-object="no"`: kept, not shown. */
  hidden?: true;
  cue?: true;
  /** As spelled. Absent on rests and unpitched notes. */
  pitch?: Pitch;
  /** MIDI key of the written pitch. */
  midi?: number;
  /** MIDI key that sounds, only where the part transposes. */
  sounding?: number;
  /** Quarters from the start of its measure. */
  onset: ExactTime;
  /** Quarters; 0 for grace notes. */
  duration: ExactTime;
  voice: string;
  staff?: number;
  /** Notated value, e.g. "quarter". */
  type?: string;
  /** Count among the pitched notes of its measure, chord members and grace notes counted, rests not, from 0. -1 on rests. */
  index: number;
  slurs: { type: 'start' | 'stop' | 'continue'; number: number; hidden?: true }[];
  ties: ('start' | 'stop')[];
  technical: TechnicalMark[];
  /** MusicXML element names: `staccato`, `accent`, `tenuto` ... */
  articulations: string[];
  /** `trill-mark`, `tremolo`, `fermata`, `arpeggiate`, `slide` ... ; a tremolo carries its strokes as "tremolo:3". */
  ornaments: string[];
  /** Dynamic in force ("p", "mf" ...), null before the first. */
  dynamic: string | null;
  /** Quarter notes per minute in force, null before the first. */
  tempo: number | null;
  /** In force at this note. */
  pizzicato?: true;
}

export interface Measure {
  /** Position in the part, from 1. The only key of a measure. */
  ordinal: number;
  /** As printed: may repeat, may be "X1" or empty. */
  number: string;
  implicit?: true;
  /** Quarters from the start of the part. */
  start: ExactTime;
  /** Quarters it really lasts. */
  length: ExactTime;
  /** Time signature in force, e.g. { beats: "4", beatType: "4" }. */
  time: { beats: string; beatType: string } | null;
  /** Fifths of the key in force. */
  fifths: number | null;
  rehearsal?: string;
  /** Words and tempo texts that begin here, in document order. */
  words: { text: string; at: ExactTime; staff?: number }[];
  /** Hairpins: MusicXML wedge types at their time. */
  wedges: { type: string; at: ExactTime }[];
  notes: Note[];
}

/** A slur from its first note to its last, paired as a reader would (a stop before its start is not paired). */
export interface Slur {
  from: string;
  to: string;
}

export interface Part {
  /** MusicXML part id. */
  id: string;
  name: string;
  /** null when it is no bowed string part. */
  instrument: InstrumentName | null;
  /** Semitones from written to sounding (double bass -12). */
  transposition: number;
  measures: Measure[];
  slurs: Slur[];
}

/** A part of a bowed string instrument. */
export type StringPart = Part & { instrument: InstrumentName };

export const isStringPart = (part: Part): part is StringPart => part.instrument !== null;

export interface Score {
  title: string;
  composer: string;
  parts: Part[];
}
