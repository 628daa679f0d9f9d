import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../core/check/checkPart.ts';
import type { Finding, OtherSection } from '../../../core/check/finding.ts';
import type { Rule } from '../../../core/check/rule.ts';
import type { Mark, MarkValue } from '../../../core/music/mark.ts';
import type { InstrumentName, Part } from '../../../core/music/part.ts';
import { type Seats, seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';

/** A mark as `[note, value]` for all, or `[note, value, seats]`. */
export type ShortMark = [note: string, value: MarkValue, seats?: Seats | undefined];

export interface Example {
  /** A claim: what holds, or what is broken. */
  title: string;
  music: string | Part;
  instrument?: InstrumentName;
  marks?: ShortMark[];
  players?: number;
  settings?: Record<string, unknown>;
  /** Sections that play beside it. */
  others?: { section: string; music: string; instrument?: InstrumentName; marks?: ShortMark[] }[];
}

export interface Broken extends Example {
  finds: (Partial<Omit<Finding, 'text'>> & { message: string; text?: string | RegExp })[];
}

export const marksOf = (marks: ShortMark[]): Mark[] => marks.map(([note, value, seats]) => ({ note, value, ...(seats ? { seats } : {}) }));

const othersOf = ({ others = [] }: Example): OtherSection[] =>
  others.map(({ section, music, instrument, marks }) => ({ section, part: partOf(music, { instrument: instrument ?? 'violin' }), marks: marksOf(marks ?? []), seats: seatsFor(4) }));

/** What one rule finds in an example. */
export function findingsOf(rule: Rule, example: Example): Finding[] {
  const part = typeof example.music === 'string' ? partOf(example.music, { instrument: example.instrument ?? 'violin' }) : example.music;
  const findings = checkPart({ part, seats: seatsFor(example.players ?? 4), marks: marksOf(example.marks ?? []), settings: example.settings ?? {}, others: othersOf(example) });
  return findings.filter((finding) => finding.rule === rule.id);
}

function expected({ text, ...fields }: Broken['finds'][number]): unknown {
  const matcher = text instanceof RegExp ? (expect.stringMatching(text) as unknown) : text === undefined ? undefined : (expect.stringContaining(text) as unknown);
  return expect.objectContaining({ ...fields, ...(matcher ? { text: matcher } : {}) }) as unknown;
}

/** The table of a rule: what holds gives no finding, what is broken gives exactly those named; every message of the rule must be among them. */
export function ruleTable(rule: Rule, table: { holds: Example[]; broken: Broken[] }): void {
  describe(rule.id, () => {
    it.each(table.holds)('holds: $title', (example) => {
      expect(findingsOf(rule, example)).toEqual([]);
    });

    it.each(table.broken)('is broken: $title', (example) => {
      const findings = findingsOf(rule, example).sort((a, b) => a.measure - b.measure);
      expect(findings).toEqual(example.finds.map(expected));
      for (const { text } of findings) expect(text).toMatch(/^[A-Z][^{}]*[.]$/);
    });

    it('every message is exercised by the table', () => {
      const seen = new Set(table.broken.flatMap((example) => example.finds.map(({ message }) => message)));
      expect(Object.keys(rule.messages).filter((message) => !seen.has(message))).toEqual([]);
    });
  });
}
