/** One pitched note of a line to be fingered, with what the fingering depends on. */
export interface LineNote {
  id: string;
  /** Sounding MIDI key. */
  midi: number;
  /** Staff step from C0 as spelled. */
  step: number;
  measure: number;
  /** Quarters in its measure. */
  onset: number;
  /** Quarters; 0 for a grace note. */
  duration: number;
  /** Quarters from the start of the line. */
  at: number;
  /** Begins together with the note before it. */
  chord: boolean;
  /** Under one slur with the note before it. */
  slurred: boolean;
  bow?: 'up' | 'down';
  /** A trill, up to the next letter. */
  trill?: true;
  /** Marked as a harmonic: natural, at the pitch that sounds or is touched; artificial, at the pitch that is stopped. */
  harmonic?: 'natural' | 'artificial';
  /** In force at the note: "pp", "mf" ... */
  dynamic?: string;
}
