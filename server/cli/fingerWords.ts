import { compareFingerings } from '../../core/fingering/compare.ts';
import { cautionWords, explain, totalWords } from '../../core/fingering/explain.ts';
import { handFacts } from '../../core/fingering/explain/handFacts.ts';
import type { PlayedLine } from '../../core/fingering/explain/playedLine.ts';
import { withinHand } from '../../core/fingering/explain/withinHand.ts';
import type { FingerLineOptions } from '../../core/fingering/fingerLine.ts';
import type { PlainFingering } from '../../core/fingering/output.ts';
import { HAND_IN_ENGLISH } from '../../core/fingering/words/english.ts';
import type { HandWords } from '../../core/fingering/words/handWords.ts';
import { noteNames } from '../../core/fingering/words/noteNames.ts';
import { stepWords } from '../../core/fingering/words/stepWords.ts';
import { withinHandWords } from '../../core/fingering/words/withinHandWords.ts';

/** A fingering in sentences. */
export interface FingeringWords {
  /** One for every note. */
  steps: { id: string; text: string }[];
  totals: string;
  /** Beside the best one; absent on it. */
  besideBest?: string[];
  caution?: string;
  /** Where the hand that was given does not reach: what it plays instead. */
  forThisHand?: { words: string[]; fingering: PlainFingering };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The English table, with measures called as the reader knows them. */
function wordsFor(measure: (ordinal: number) => string): HandWords {
  return { ...HAND_IN_ENGLISH, measure, measures: (from: number, to: number) => (from === to ? capital(measure(from)) : `From ${measure(from)} to ${measure(to)}`) };
}

/** Each fingering in sentences: step by step, in all, beside the best one, and for the hand that was given. */
export function fingeringWords(played: PlayedLine, fingerings: readonly PlainFingering[], tempo: number, options: FingerLineOptions, measure: (ordinal: number) => string): FingeringWords[] {
  const words = wordsFor(measure);
  const nameOf = noteNames(words, played.line);
  return fingerings.map((fingering, i) => {
    const facts = handFacts(played, fingering);
    const beside = i === 0 ? null : explain(words, played, compareFingerings(played, fingerings[0]!, fingering));
    const caution = cautionWords(words, facts);
    const instead = options.hand === undefined ? null : withinHand(played.instrument, played.line, tempo, fingering, options);
    return {
      steps: facts.steps.map((step) => ({ id: step.note, text: stepWords(words, step, nameOf) })),
      totals: totalWords(words, `Fingering ${i + 1}`, facts),
      ...(beside === null ? {} : { besideBest: [...beside.differences, ...(beside.costs === null ? [] : [beside.costs])] }),
      ...(caution === null ? {} : { caution }),
      ...(instead === null ? {} : { forThisHand: { words: withinHandWords(words, played, fingering, instead), fingering: instead.fingering } }),
    };
  });
}
