import type { Mark } from '../music/mark.ts';
import type { Measure, Note } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { factWords } from './fact.ts';
import type { Finding, Severity } from './finding.ts';
import { fingerprintOf } from './fingerprint.ts';
import { RULES } from './registry.ts';
import type { Report, Rule } from './rule.ts';
import type { CheckSettings } from './settings.ts';
import { measureName, seatsInWords } from './words.ts';

/** What a finding is worded from. */
export interface Index {
  notes: ReadonlyMap<string, Note>;
  measures: readonly Measure[];
  /** Marks by note. */
  marks: ReadonlyMap<string, readonly Mark[]>;
  seats: readonly SeatId[];
}

/** A finding before it is known whether its rule names it. */
export interface Reported {
  finding: Finding;
  rule: Rule;
  /** 0 where the rule names all it finds. */
  rank: number;
}

const WEIGHT: Record<Severity, number> = { cannotPlay: 0, collides: 1, worthALook: 2 };
const RANK = new Map(RULES.map(({ id }, i) => [id, i]));

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Words a report. Seats are put front to back, in whatever order a rule came upon them. */
export function worded(rule: Rule, report: Report, index: Index): Reported {
  const everyone = !report.seats.length || report.seats.length === index.seats.length;
  const seats = everyone ? [] : index.seats.filter((seat) => report.seats.includes(seat));
  const who = seatsInWords(seats, index.seats);
  const spoken = Object.entries(report.facts).map(([blank, fact]) => [blank, factWords(fact, index.measures, index.seats)]);
  const blanks: Record<string, string> = { ...Object.fromEntries(spoken), where: measureName(index.measures[report.measure - 1]!), who, Who: capital(who) };
  const finding: Finding = {
    rule: rule.id,
    message: report.message,
    text: capital(rule.messages[report.message]!.replace(/\{(\w+)\}/g, (_, blank: string) => blanks[blank]!)),
    facts: report.facts,
    severity: report.severity ?? rule.severity,
    measure: report.measure,
    notes: [...report.notes],
    seats: everyone ? 'all' : seats,
    exposure: Math.min(1, Math.max(0, report.exposure)),
    place: `${report.message}:${report.place ?? report.notes[0]}`,
    fingerprint: fingerprintOf(report.notes.map((id) => index.notes.get(id)!), report.notes.flatMap((id) => index.marks.get(id) ?? []), seats, report.besides),
  };
  return { finding, rule, rank: report.rank ?? 0 };
}

const inText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Worst first, then most exposed, then in the order of the measures; what is left by rule, place and seats, so that the order hangs on nothing else. */
const order = (a: Finding, b: Finding): number =>
  WEIGHT[a.severity] - WEIGHT[b.severity] || b.exposure - a.exposure || a.measure - b.measure || RANK.get(a.rule)! - RANK.get(b.rule)! || inText(a.place, b.place) || inText(String(a.seats), String(b.seats));

/** Of each rule that names only the most telling ones, those; all together in order. */
export function named(reported: readonly Reported[], settings: CheckSettings, measures: number): Finding[] {
  const ranked = new Map<Rule, Reported[]>();
  const findings: Finding[] = [];
  for (const one of reported) {
    const known = ranked.get(one.rule);
    if (!one.rule.most) findings.push(one.finding);
    else if (known) known.push(one);
    else ranked.set(one.rule, [one]);
  }
  for (const [rule, found] of ranked) {
    found.sort((a, b) => b.rank - a.rank || order(a.finding, b.finding));
    findings.push(...found.slice(0, rule.most!(settings, measures)).map(({ finding }) => finding));
  }
  return findings.sort(order);
}
