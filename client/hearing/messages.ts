import type { PlainFingering } from '../../core/fingering/output.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { SeatId } from '../../core/music/seat.ts';
import type { Seconds } from '../../core/music/seconds.ts';

/** A passage to be heard. */
export interface HearQuestion {
  /** First and last note. */
  from: string;
  to: string;
  /** Null: as the marks in force have it, worked out where they say nothing. */
  fingering: PlainFingering | null;
  /** Marks in force: they say who bows how. */
  marks: readonly Mark[];
  seats: readonly SeatId[];
  /** Whose bows one player plays. */
  seat: SeatId | 'all';
  settings: Record<string, unknown>;
  who: 'one' | 'section';
  /** Share of the tempo. */
  pace: number;
  click: boolean;
}

/** The passage as it sounds. */
export interface Heard {
  samples: Float32Array<ArrayBuffer>;
  /** Samples a second. */
  rate: number;
  /** When each note begins, in order. */
  notes: { note: string; from: Seconds }[];
}
