import type { Comparison } from './compare.ts';
import type { FingeringFacts } from './explain/handFacts.ts';
import type { PlayedLine } from './explain/playedLine.ts';
import type { HandWords, Names } from './words/handWords.ts';
import { noteNames } from './words/noteNames.ts';
import { apartWords, passageWords } from './words/passageWords.ts';
import { stretchWords } from './words/stepWords.ts';

/** A comparison in sentences, each to stand by itself. */
export interface Explanation {
  /** One for every difference, in order. */
  differences: string[];
  /** What each asks for in all: a, then b. */
  totals: [string, string];
  /** Which costs more and by what; null where they cost the same. */
  costs: string | null;
  /** Where a stretch of either passes the limit. */
  caution: string | null;
}

/** Costs named, largest first: chosen, not measured. */
const TERMS_TOLD = 3;
/** Differences of cost smaller than this are rounding. */
const SMALLEST = 0.005;

/** What a fingering asks for in all. Example: "a: 2 shifts, 3 string crossings, 0 open notes, 1 audible slide; widest stretch 1-4 of 97 mm, stretched." */
export function totalWords(words: HandWords, name: string, { shifts, crossings, openStrings, slides, widest }: FingeringFacts): string {
  return words.totals(name, { shifts, crossings, openStrings, slides: slides.length }, widest === null ? null : stretchWords(words, widest));
}

function costWords(words: HandWords, [a, b]: Names, { cost, terms }: Comparison): string | null {
  if (Math.abs(cost.difference) < SMALLEST) return null;
  const dearer = cost.difference > 0 ? 1 : -1;
  const most = terms.filter(({ difference }) => Math.abs(difference) >= SMALLEST).slice(0, TERMS_TOLD);
  return words.costs(dearer > 0 ? b : a, Math.abs(cost.difference), most.map(({ term, difference }) => ({ term: words.terms[term] ?? term, difference: difference * dearer })));
}

/** The caution where a stretch passes the limit, else null; never a clearance. */
export function cautionWords(words: HandWords, { steps }: FingeringFacts): string | null {
  return steps.some(({ stretch }) => stretch?.beyond) ? words.caution : null;
}

/**
 * What a comparison means, in the words of a table: where the two part and what each does there, their totals, their costs, and the caution where a
 * stretch passes the limit. `names` are those of the two sides. Example: "Measures 45 to 46: a stays in third position and crosses to the D string at the B flat; b shifts twice on the A
 * string and slides audibly into measure 46."
 */
export function explain(words: HandWords, played: PlayedLine, comparison: Comparison, names: Names = ['a', 'b']): Explanation {
  const differences = comparison.differences.map(({ notes, measures, a, b }) => {
    const told = new Set([...notes, ...a.steps.map(({ note }) => note), ...b.steps.map(({ note }) => note)]);
    const nameOf = noteNames(words, played.line.filter(({ id }) => told.has(id)), measures[0] === measures[1] ? measures[0] : null);
    const [one, other] = [a, b].map((facts) => passageWords(words, played, facts, nameOf)) as [string, string];
    return words.sideBySide(words.measures(...measures), names, ...(one === other ? apartWords(words, played, [a, b], nameOf) : ([one, other] as const)));
  });
  return {
    differences: differences.length > 0 ? differences : [words.alike],
    totals: [totalWords(words, names[0], comparison.a), totalWords(words, names[1], comparison.b)],
    costs: costWords(words, names, comparison),
    caution: cautionWords(words, comparison.a) ?? cautionWords(words, comparison.b),
  };
}
