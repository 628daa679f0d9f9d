import type { HandProfile } from '../hand/reach.ts';
import type { Instrument } from '../instruments/instrument.ts';
import type { Aim, OpenStrings } from './aims.ts';
import type { Weights } from './fit/chain.ts';
import type { LineNote } from './line.ts';
import type { Pin } from './pin.ts';

/** What is asked of the engine. */
export interface FingeringRequest {
  instrument: Instrument;
  line: readonly LineNote[];
  /** Quarters a minute. */
  tempo: number;
  /** By note id; hard. */
  pins: ReadonlyMap<string, Pin>;
  aim: Aim;
  openStrings?: OpenStrings;
  hand: HandProfile;
  /** Players in the section, and how many of them use this fingering. */
  players: number;
  sliding: number;
  /** Fitted weights of the instrument, null where no professionals' fingerings are known. */
  weights: Weights | null;
}
