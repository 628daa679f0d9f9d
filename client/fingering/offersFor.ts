import { printedMarks } from '../../core/check/printedMarks.ts';
import { compareFingerings } from '../../core/fingering/compare.ts';
import { cautionWords, explain, totalWords } from '../../core/fingering/explain.ts';
import { handFacts } from '../../core/fingering/explain/handFacts.ts';
import { handPath } from '../../core/fingering/explain/handPath.ts';
import type { PlayedLine } from '../../core/fingering/explain/playedLine.ts';
import { withinHand } from '../../core/fingering/explain/withinHand.ts';
import { fingerLine, type FingerLineOptions } from '../../core/fingering/fingerLine.ts';
import type { PlainFingering } from '../../core/fingering/output.ts';
import { pinsOf } from '../../core/fingering/partLine.ts';
import { sparseMarks } from '../../core/fingering/sparseMarks.ts';
import type { HandWords } from '../../core/fingering/words/handWords.ts';
import { noteNames } from '../../core/fingering/words/noteNames.ts';
import { stepWords } from '../../core/fingering/words/stepWords.ts';
import { withinHandWords } from '../../core/fingering/words/withinHandWords.ts';
import { instrumentNamed } from '../../core/instruments/instrumentNamed.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';
import { numberOf } from '../../core/music/printedNumber.ts';
import { handIn } from './handIn.ts';
import { passageLine } from './passageLine.ts';
import { LETTERS, type Offer, type Offers, type Pair, type Question } from './messages.ts';

const BEST = 5;

const printedIn = (part: Part, notes: ReadonlySet<string>): Mark[] =>
  part.measures.flatMap((measure) => measure.notes.filter(({ id }) => notes.has(id)).flatMap((note) => printedMarks(note).map((value) => ({ note: note.id, value }))));

interface Asked {
  played: PlayedLine;
  tempo: number;
  options: FingerLineOptions;
  words: HandWords;
}

function pairOf({ played, words }: Asked, fingerings: readonly PlainFingering[], a: number, b: number): Pair {
  const comparison = compareFingerings(played, fingerings[a]!, fingerings[b]!);
  const { differences, costs } = explain(words, played, comparison, [LETTERS[a]!, LETTERS[b]!]);
  return { a, b, differs: comparison.differing, sentences: differences, costs };
}

function offerOf({ played, tempo, options, words }: Asked, by: Offer['by'], fingering: PlainFingering, beside: string[], letter: string): Offer {
  const facts = handFacts(played, fingering);
  const nameOf = noteNames(words, played.line);
  const caution = cautionWords(words, facts);
  const instead = options.hand === undefined ? null : withinHand(played.instrument, played.line, tempo, fingering, options);
  return {
    by,
    marks: sparseMarks(played.instrument, played.line, fingering),
    facts,
    path: handPath(played, fingering),
    fingering,
    cost: fingering.cost,
    terms: Object.entries(fingering.terms).map(([term, cost]) => ({ term: words.terms[term] ?? term, cost })).filter(({ cost }) => Math.abs(cost) >= 0.005).sort((a, b) => Math.abs(b.cost) - Math.abs(a.cost)),
    steps: facts.steps.map((step) => ({ note: step.note, name: nameOf(step.note), text: stepWords(words, step, nameOf) })),
    totals: totalWords(words, letter, facts),
    beside,
    cautions: [...(caution === null ? [] : [caution]), ...(instead === null ? [] : withinHandWords(words, played, fingering, instead))],
  };
}

/**
 * What can be played in a passage: the engine's five best that differ, then the section's fingering and the printed one as far as they are marked,
 * all keeping to what is pencilled. Empty with refusals where nothing can be played. Throws where the part names no string instrument.
 */
export function offersFor(part: Part, question: Question): Offers {
  if (part.instrument === null) throw new Error('The part names no string instrument');
  const { line, tempo: given } = passageLine(part, question.from, question.to);
  const notes = new Set(line.map(({ id }) => id));
  const instrument = instrumentNamed(part.instrument);
  const tempo = given ?? question.assumedTempo;
  const pencilled = question.pencilled.filter((mark) => notes.has(mark.note));
  const { aim, openStrings, players } = question;
  const options = { aim, openStrings, players, pins: pinsOf(pencilled), ...(question.hand ? { hand: question.hand } : {}) } satisfies FingerLineOptions;
  const played: PlayedLine = { instrument, line, ...(question.hand ? { hand: question.hand } : {}) };
  const called = new Map(part.measures.map((measure) => [measure.ordinal, numberOf(measure)]));
  const words = handIn(question.language, (ordinal) => called.get(ordinal) ?? String(ordinal));

  const suggested = fingerLine(instrument, line, tempo, { ...options, best: BEST });
  if (suggested.fingerings.length === 0) return { offers: [], pairs: [], refusals: suggested.refusals };
  const asked: Asked = { played, tempo, options, words };
  const settled = (marks: readonly Mark[]): PlainFingering[] => {
    const pins = pinsOf([...marks.filter((mark) => notes.has(mark.note)), ...pencilled]);
    return pins.size > options.pins.size ? fingerLine(instrument, line, tempo, { ...options, pins, best: 1 }).fingerings : [];
  };
  const known = [
    ...suggested.fingerings.map((fingering) => ({ by: 'engine' as const, fingering })),
    ...settled(question.standing).map((fingering) => ({ by: 'section' as const, fingering })),
    ...settled(printedIn(part, notes)).map((fingering) => ({ by: 'print' as const, fingering })),
  ];
  const fingerings = known.map(({ fingering }) => fingering);
  const pairs = fingerings.flatMap((_, a) => fingerings.slice(a + 1).map((_other, i) => pairOf(asked, fingerings, a, a + 1 + i)));
  return { pairs, offers: known.map(({ by, fingering }, i) => offerOf(asked, by, fingering, pairs.find(({ a, b }) => a === 0 && b === i)?.sentences ?? [], LETTERS[i]!)), refusals: suggested.refusals };
}
