import type { FingeringFacts, StepFacts } from '../explain/handFacts.ts';
import type { PlayedLine } from '../explain/playedLine.ts';
import type { HandWords } from './handWords.ts';

/** Shifts are told one by one up to here: chosen, not measured. */
const SHIFTS_TOLD = 2;
/** Fingers are told one by one up to here, where nothing else tells two fingerings apart: chosen, not measured. */
const FINGERS_TOLD = 6;

interface Speaking {
  words: HandWords;
  played: PlayedLine;
  nameOf: (id: string) => string;
}

const only = <T>(values: readonly T[]): T | null => (new Set(values).size === 1 ? values[0]! : null);

const stringWords = ({ words, played }: Speaking, string: number): string => words.string(played.instrument.stringNames[string - 1]!);

function shiftClauses(speaking: Speaking, facts: FingeringFacts): string[] {
  const { words, nameOf } = speaking;
  const delayed = facts.steps.filter((step) => step.kind === 'delayed-shift' && step.followsAt !== null);
  const others = facts.steps.filter((step) => step.shifts && step.kind !== 'delayed-shift');
  const told = delayed.map((step) => words.clause.delayed(nameOf(step.note), words.finger(step.finger), nameOf(step.followsAt!)));
  if (others.length > SHIFTS_TOLD) {
    const string = only(others.map((step) => step.string));
    return [...told, words.clause.shifts(others.length, string === null ? null : stringWords(speaking, string))];
  }
  return [...told, ...others.map((step) => oneShift(speaking, step))];
}

function oneShift(speaking: Speaking, step: StepFacts): string {
  const { words, nameOf } = speaking;
  if (step.kind === 'substitution') return words.clause.substitutes(words.finger(step.finger), nameOf(step.note));
  const position = words.position(step.position);
  if (step.kind === 'shift-over-open') return words.clause.shiftsOverOpen(position);
  return words.clause.shiftsTo(position, stringWords(speaking, step.string), nameOf(step.note));
}

function crossingClauses(speaking: Speaking, { steps }: FingeringFacts): string[] {
  const { words, nameOf } = speaking;
  const crossings = steps.filter((step) => step.crosses);
  const [first, second] = crossings;
  if (first === undefined) return [];
  const string = stringWords(speaking, first.string);
  if (second === undefined) return [words.clause.crossesTo(string, nameOf(first.note))];
  if (crossings.length === 2 && second.string === first.fromString) return [words.clause.crossesAndBack(string, nameOf(first.note), nameOf(second.note))];
  return [words.clause.crosses(crossings.length)];
}

function placeClauses(speaking: Speaking, facts: FingeringFacts): string[] {
  const { words, nameOf } = speaking;
  const stopped = facts.steps.filter((step) => step.finger !== 0);
  const position = only(stopped.map((step) => step.position));
  const string = facts.crossings > 0 ? null : only(facts.steps.map((step) => step.string));
  const reaches = facts.steps.filter((step) => step.kind === 'extension');
  const open = facts.steps.filter((step) => step.finger === 0);
  return [
    ...(facts.shifts === 0 && position !== null ? [words.clause.stays(words.position(position), string === null ? null : stringWords(speaking, string))] : []),
    ...shiftClauses(speaking, facts),
    ...crossingClauses(speaking, facts),
    ...(reaches.length === 1 ? [words.clause.reachesFor(nameOf(reaches[0]!.note), words.finger(reaches[0]!.finger), reaches[0]!.reach)] : reaches.length > 1 ? [words.clause.reaches(reaches.length)] : []),
    ...(open.length > 0 ? [words.clause.open(open.map((step) => nameOf(step.note)))] : []),
  ];
}

function slideClauses({ words, played, nameOf }: Speaking, { slides, shifts }: FingeringFacts): string[] {
  const [loudest] = slides;
  if (loudest === undefined) return shifts > 0 ? [words.clause.noSlide] : [];
  if (slides.length > 1) return [words.clause.slides(slides.length, nameOf(loudest.note))];
  const at = played.line.findIndex(({ id }) => id === loudest.note);
  const begins = at > 0 && played.line[at - 1]!.measure !== played.line[at]!.measure;
  return [begins ? words.clause.slidesIntoMeasure(words.measure(loudest.measure)) : words.clause.slidesInto(nameOf(loudest.note))];
}

/** Example: "takes it with 1, 2 and 4". */
export function fingerWords(words: HandWords, facts: FingeringFacts): string {
  return words.clause.fingers(facts.steps.slice(0, FINGERS_TOLD).map((step) => words.finger(step.finger)));
}

/** What tells two stretches apart whose clauses are the same: their fingers, or where the first note lies that lies elsewhere. Example: "has the E in third position on the A string". */
export function apartWords(words: HandWords, played: PlayedLine, [a, b]: readonly [FingeringFacts, FingeringFacts], nameOf: (id: string) => string): [string, string] {
  const fingers = [fingerWords(words, a), fingerWords(words, b)] as [string, string];
  const at = a.steps.findIndex((step, i) => step.position !== b.steps[i]?.position || step.string !== b.steps[i]?.string);
  if (fingers[0] !== fingers[1] || at < 0) return fingers;
  return [a, b].map(({ steps }) => words.clause.lies(words.position(steps[at]!.position), stringWords({ words, played, nameOf }, steps[at]!.string), nameOf(steps[at]!.note))) as [string, string];
}

/**
 * What the hand does in a stretch of a line, as clauses without a subject. Never empty for a stretch with notes.
 * Example: "stays in third position and crosses to the D string at the B flat".
 */
export function passageWords(words: HandWords, played: PlayedLine, facts: FingeringFacts, nameOf: (id: string) => string): string {
  const speaking = { words, played, nameOf };
  const clauses = [...placeClauses(speaking, facts), ...slideClauses(speaking, facts)];
  return clauses.length > 0 ? words.join(clauses) : fingerWords(words, facts);
}
