import type { HandProfile } from '../../hand/reach.ts';
import type { Instrument } from '../../instruments/instrument.ts';

/** Who plays: the instrument, the hand, and the section around it. */
export interface Player {
  instrument: Instrument;
  hand: HandProfile;
  /** Players in the section. */
  players: number;
  /** How many of them slide together where one fingering holds for all. */
  sliding: number;
}
