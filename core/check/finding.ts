import type { Fact } from './fact.ts';
import type { Mark } from '../music/mark.ts';
import type { Part } from '../music/part.ts';
import type { SeatId, Seats } from '../music/seat.ts';

/** cannotPlay: not playable as written · collides: two players or two marks get in each other's way · worthALook: a player would want to know. */
export type Severity = 'cannotPlay' | 'collides' | 'worthALook';

export interface Finding {
  rule: string;
  /** Key of the message in its rule. */
  message: string;
  /** The sentence a player reads, with what they can do. */
  text: string;
  /** What its sentence says besides where and who, for another language. */
  facts: Readonly<Record<string, Fact>>;
  severity: Severity;
  /** Ordinal of the measure it stands in. */
  measure: number;
  /** Notes it is about, first one first. */
  notes: string[];
  seats: Seats;
  /** 0 (nobody hears it) to 1 (everybody does); ranks findings of one severity. */
  exposure: number;
  /** Names this place for muting; the same for the same fault after an edit elsewhere. */
  place: string;
  /** Changes when the music or the marks there change: a mute with another fingerprint no longer holds. */
  fingerprint: string;
}

/** Another section of the score, for what is agreed across sections. */
export interface OtherSection {
  section: string;
  part: Part;
  marks: readonly Mark[];
  seats: readonly SeatId[];
}

export interface CheckInput {
  part: Part;
  /** Seats that play, front to back. */
  seats: readonly SeatId[];
  /** Every mark in force; `seats` says whose ("all" where absent). */
  marks: readonly Mark[];
  /** As stored with the section; missing values take the defaults of core/check/settings.ts. */
  settings: Record<string, unknown>;
  /** The other sections; without them nothing is said about what sections play together. */
  others?: readonly OtherSection[];
}
