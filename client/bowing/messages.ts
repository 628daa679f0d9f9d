import type { PlainBowing } from '../../core/bowing/direction/partBowings.ts';
import type { Millimetres } from '../../core/instruments/instrument.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { Seconds } from '../../core/music/seconds.ts';
import type { SeatId } from '../../core/music/seat.ts';

/** What stands, and whose part it is read on. */
export interface HairQuestion {
  marks: readonly Mark[];
  seats: readonly SeatId[];
  seat: SeatId | 'all';
  settings: Record<string, unknown>;
}

/** One bow along the hair. */
export interface HairBow {
  /** Ids of the notes under it, in order. */
  notes: readonly string[];
  measure: number;
  direction: 'down' | 'up';
  begins: Seconds;
  ends: Seconds;
  /** Millimetres from the frog. */
  from: Millimetres;
  to: Millimetres;
  /** mm/s. */
  speed: number;
  pace: PlainBowing['along'][number]['pace'];
  /** Where the hair does not last: what is missing, and which bows drawn otherwise would mend it. */
  short: { kind: 'runs-out' | 'wrong-end'; by: Millimetres; fix: { bow: number; pace: 'faster' | 'slower' }[] } | null;
  /** Its direction is printed or marked; otherwise it is worked out. */
  marked: boolean;
  /** Read for everybody, while each seat has changes of its own inside it. */
  shared: boolean;
  /** Why it goes this way. */
  reason: string;
}

export interface HairAnswer {
  /** Length of the hair that can be drawn. */
  hair: Millimetres;
  /** Bows of each voice, in order. */
  voices: HairBow[][];
  /** When each measure begins. */
  barlines: { ordinal: number; second: Seconds }[];
  end: Seconds;
}
