import type { SeatId } from '../music/seat.ts';
import type { CheckContext } from './context.ts';
import type { Severity } from './finding.ts';

type Blanks<Text extends string> = Text extends `${string}{${infer Blank}}${infer Rest}` ? Blank | Blanks<Rest> : never;
/** Filled in for every message: where it is, and who it is about. */
type Given = 'where' | 'who' | 'Who';

/** What a rule says it found; `facts` fill the blanks of its message. */
export interface Report {
  message: string;
  facts: Record<string, string | number>;
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
  /** What it depends on beyond its own notes and the marks on them: a mute ends when this changes too. */
  besides?: string;
}

/** A report whose facts are exactly the blanks of its message. */
type TypedReport<Messages extends Record<string, string>> = {
  [Key in keyof Messages & string]: Omit<Report, 'message' | 'facts'> & { message: Key; facts: Record<Exclude<Blanks<Messages[Key]>, Given>, string | number> };
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

export interface Rule extends Statement<Record<string, string>> {
  check(part: CheckContext, report: (finding: Report) => void): void;
}

interface TypedRule<Messages extends Record<string, string>> extends Statement<Messages> {
  check(part: CheckContext, report: (finding: TypedReport<Messages>) => void): void;
}

/** A rule with its messages typed: a blank left open or filled without need does not compile. Example: see rules/fingering/zero-is-open.ts. */
export function defineRule<const Messages extends Record<string, string>>(rule: TypedRule<Messages>): Rule {
  return rule;
}
