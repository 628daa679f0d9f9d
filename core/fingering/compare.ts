import { handFacts, totalsOf, type FingeringFacts, type StepFacts } from './explain/handFacts.ts';
import type { PlayedLine } from './explain/playedLine.ts';
import type { PlainFingering } from './output.ts';

/** Where two fingerings part, and what each does until they meet again. */
export interface Difference {
  /** Notes played differently, in order; one that both play alike may stand between. */
  notes: string[];
  /** Ordinals of the first and the last measure. */
  measures: [number, number];
  a: FingeringFacts;
  b: FingeringFacts;
}

export interface TermDifference {
  term: string;
  a: number;
  b: number;
  /** b less a: above 0 where b pays more. */
  difference: number;
}

export interface Comparison {
  a: FingeringFacts;
  b: FingeringFacts;
  differences: Difference[];
  /** Every note played differently, in order; without those between that both play alike. */
  differing: string[];
  /** Largest difference first; the sums are the two costs. */
  terms: TermDifference[];
  cost: { a: number; b: number; difference: number };
}

/** Notes played alike between two differences that are still one difference: chosen, not measured. */
const BRIDGED = 1;

const sameWay = (a: StepFacts | undefined, b: StepFacts | undefined): boolean =>
  a !== undefined && b !== undefined && a.string === b.string && a.finger === b.finger && (a.finger === 0 || a.position === b.position);

interface Row {
  note: string;
  measure: number;
  a: StepFacts | undefined;
  b: StepFacts | undefined;
}

/** Spans of rows that differ, first and last row included. */
function spansOf(rows: readonly Row[]): [number, number][] {
  const spans: [number, number][] = [];
  rows.forEach(({ a, b }, i) => {
    if (sameWay(a, b)) return;
    const last = spans.at(-1);
    if (last && i - last[1] <= BRIDGED + 1) last[1] = i;
    else spans.push([i, i]);
  });
  return spans;
}

/** What one of them does in a span, the step back to what both play included. */
function sideOf(rows: readonly Row[], [from, to]: readonly [number, number], side: 'a' | 'b'): FingeringFacts {
  const steps = rows.slice(from, to + 2).flatMap((row) => row[side] ?? []);
  const inside = rows.slice(from, to + 1).flatMap((row) => row[side] ?? []);
  return { steps, ...totalsOf(steps), openStrings: totalsOf(inside).openStrings };
}

function termsOf(a: PlainFingering, b: PlainFingering): TermDifference[] {
  const names = [...new Set([...Object.keys(a.terms), ...Object.keys(b.terms)])];
  const terms = names.map((term) => ({ term, a: a.terms[term] ?? 0, b: b.terms[term] ?? 0, difference: (b.terms[term] ?? 0) - (a.terms[term] ?? 0) }));
  return terms.sort((one, other) => Math.abs(other.difference) - Math.abs(one.difference) || one.term.localeCompare(other.term, 'en'));
}

/**
 * Two fingerings of one line side by side: where they differ and what each does there, what each asks for in all, and what makes up their costs.
 * Symmetrical but for the signs. Throws where a fingering names a note that is not in the line.
 * Example: a fingering beside itself has no difference and every term's difference is 0.
 */
export function compareFingerings(played: PlayedLine, a: PlainFingering, b: PlainFingering): Comparison {
  const [one, other] = [handFacts(played, a), handFacts(played, b)];
  const [ofA, ofB] = [one, other].map(({ steps }) => new Map(steps.map((step) => [step.note, step])));
  const rows = played.line.map(({ id, measure }): Row => ({ note: id, measure, a: ofA!.get(id), b: ofB!.get(id) })).filter((row) => row.a !== undefined || row.b !== undefined);
  const differences = spansOf(rows).map((span): Difference => {
    const inside = rows.slice(span[0], span[1] + 1);
    return { notes: inside.map(({ note }) => note), measures: [inside[0]!.measure, inside.at(-1)!.measure], a: sideOf(rows, span, 'a'), b: sideOf(rows, span, 'b') };
  });
  const differing = rows.filter((row) => !sameWay(row.a, row.b)).map(({ note }) => note);
  return { a: one, b: other, differences, differing, terms: termsOf(a, b), cost: { a: a.cost, b: b.cost, difference: b.cost - a.cost } };
}
