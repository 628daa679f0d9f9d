import type { Mark } from '../music/mark.ts';
import type { InstrumentName, Measure, Note, Part } from '../music/part.ts';
import type { SeatId } from '../music/seat.ts';
import { checkContext } from './context.ts';
import type { CheckInput, Finding, Severity } from './finding.ts';
import { fingerprintOf } from './fingerprint.ts';
import { RULES } from './registry.ts';
import type { Report, Rule } from './rule.ts';
import { CheckSettings } from './settings.ts';
import { measureName, seatsInWords } from './words.ts';

const WEIGHT: Record<Severity, number> = { cannotPlay: 0, collides: 1, worthALook: 2 };

const isStringPart = (part: Part): part is Part & { instrument: InstrumentName } => part.instrument !== null;

interface Index {
  notes: ReadonlyMap<string, Note>;
  measures: ReadonlyMap<number, Measure>;
  marks: ReadonlyMap<string, Mark[]>;
  seats: readonly SeatId[];
}

function indexOf({ part, marks, seats }: CheckInput): Index {
  const onNote = new Map<string, Mark[]>();
  for (const mark of marks) onNote.set(mark.note, [...(onNote.get(mark.note) ?? []), mark]);
  return {
    notes: new Map(part.measures.flatMap((measure) => measure.notes.map((note) => [note.id, note] as const))),
    measures: new Map(part.measures.map((measure) => [measure.ordinal, measure])),
    marks: onNote,
    seats,
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function findingOf(rule: Rule, report: Report, index: Index): Finding {
  const everyone = !report.seats.length || report.seats.length === index.seats.length;
  const who = seatsInWords(report.seats, index.seats);
  const blanks: Record<string, string | number> = { ...report.facts, where: measureName(index.measures.get(report.measure)!), who, Who: capital(who) };
  return {
    rule: rule.id,
    message: report.message,
    text: capital(rule.messages[report.message]!.replace(/\{(\w+)\}/g, (_, blank: string) => String(blanks[blank]))),
    severity: report.severity ?? rule.severity,
    measure: report.measure,
    notes: [...report.notes],
    seats: everyone ? 'all' : [...report.seats],
    exposure: Math.min(1, Math.max(0, report.exposure)),
    place: `${report.message}:${report.place ?? report.notes[0]}`,
    fingerprint: fingerprintOf(report.notes.map((id) => index.notes.get(id)!), report.notes.flatMap((id) => index.marks.get(id) ?? []), everyone ? [] : report.seats, report.besides),
  };
}

/**
 * Everything the rules find in a part as marked: worst first, then most exposed, then in the order of the measures. Empty for a part that is no bowed string part.
 * Model and limits: those of each rule; repeats are read once. Settings that are missing take their defaults; of wrong form they throw (check them with
 * `CheckSettings` where they come in). Same input, same findings.
 * Example: `checkPart({ part, seats: seatsFor(12), marks: [], settings: {} })`.
 */
export function checkPart(input: CheckInput): Finding[] {
  const settings = CheckSettings.parse(input.settings);
  if (!isStringPart(input.part)) return [];
  const context = checkContext(input.part, input.seats, input.marks, settings, input.others);
  const index = indexOf(input);
  const findings: Finding[] = [];
  for (const rule of RULES) rule.check(context, (report) => findings.push(findingOf(rule, report, index)));
  return findings.sort((a, b) => WEIGHT[a.severity] - WEIGHT[b.severity] || b.exposure - a.exposure || a.measure - b.measure);
}
