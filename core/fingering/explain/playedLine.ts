import type { HandProfile } from '../../hand/reach.ts';
import type { Instrument } from '../../instruments/instrument.ts';
import type { LineNote } from '../line.ts';

/** A line and who plays it: what an explanation needs beside the fingering itself. */
export interface PlayedLine {
  instrument: Instrument;
  line: readonly LineNote[];
  /** The usual hand where absent. */
  hand?: HandProfile;
}
