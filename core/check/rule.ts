import type { BowEvent } from '../bowing/events.ts';
import type { SeatId } from '../music/seat.ts';
import type { CheckContext, PartMusic, SectionContext } from './context.ts';
import type { Fact } from './fact.ts';
import type { Severity } from './finding.ts';
import type { CheckSettings } from './settings.ts';

type Blanks<Text extends string> = Text extends `${string}{${infer Blank}}${infer Rest}` ? Blank | Blanks<Rest> : never;
/** Filled in for every message: where it is, and who it is about. */
type Given = 'where' | 'who' | 'Who';

/** What a rule says it found; `facts` fill the blanks of its message. */
export interface Report {
  message: string;
  facts: Record<string, Fact>;
  /** Ordinal of the measure it stands in. */
  measure: number;
  /** Note ids, the first one first. */
  notes: readonly string[];
  /** Empty or all of them: everyone. */
  seats: readonly SeatId[];
  /** 0 to 1. */
  exposure: number;
  /** Where this message weighs less or more than its rule. */
  severity?: Severity;
  /** Names the place where the first note alone does not: by a desk, a time, a figure. Nothing that an edit elsewhere changes. */
  place?: string;
  /** Where the rule names only the most telling ones (`most`): higher first. */
  rank?: number;
  /** What it depends on beyond its own notes and the marks on them: a mute ends when this changes too. */
  besides?: string;
}

/** A report whose facts are exactly the blanks of its message. */
type TypedReport<Messages extends Record<string, string>> = {
  [Key in keyof Messages & string]: Omit<Report, 'message' | 'facts'> & { message: Key; facts: Record<Exclude<Blanks<Messages[Key]>, Given>, Fact> };
}[keyof Messages & string];

interface Statement<Messages extends Record<string, string>> {
  /** Its path below rules/. Never used again once retired. */
  id: string;
  severity: Severity;
  /** What holds, in players' words. */
  summary: string;
  why: string;
  /** Keys of core/SOURCES.md. */
  source: readonly string[];
  /** Sentences with blanks, `{where}` and `{who}` among them. */
  messages: Messages;
}

/** Stretches of one part that are the same music, read together wherever they stand. */
export interface Kin {
  /** Same over every edit of the marks. */
  name: string;
  /** Ordinals of the measures they stand in; what lies outside them does not matter. */
  measures: readonly number[];
  /** What corresponds, in order: the last stretch, and the first time it was heard with some of the times between. */
  pairs: readonly { models: readonly BowEvent[]; again: BowEvent }[];
}

interface Checks<Found> {
  /**
   * Looks over the music at hand. What it reports at a note may hang on marks up to two dozen notes away in each voice, on the bows the settings count,
   * and on the whole of a held note or slur it lies in; never on more.
   */
  check?(part: CheckContext, report: (finding: Found) => void): void;
  /** Places far apart that belong together, found from the music alone; `compare` sees their measures and nothing else. */
  kin?(music: PartMusic): readonly Kin[];
  compare?(part: CheckContext, kin: Kin, report: (finding: Found) => void): void;
  /** Looks over the whole part as marked for all of its section, and over those beside it: only for what is quick to compare. */
  across?(section: SectionContext, report: (finding: Found) => void): void;
  /** How many are named in so many measures; all where absent. */
  most?(settings: CheckSettings, measures: number): number;
}

export interface Rule extends Statement<Record<string, string>>, Checks<Report> {}

interface TypedRule<Messages extends Record<string, string>> extends Statement<Messages>, Checks<TypedReport<Messages>> {}

/** A rule with its messages typed: a blank left open or filled without need does not compile. Example: see rules/fingering/zero-is-open.ts. */
export function defineRule<const Messages extends Record<string, string>>(rule: TypedRule<Messages>): Rule {
  return rule;
}
