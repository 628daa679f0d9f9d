import { HEARD, type StepFacts } from '../explain/handFacts.ts';
import type { HandWords } from './handWords.ts';

/** Slides below this index are not worth a word: chosen, not measured. */
const WORTH_A_WORD = 0.1;

function distanceWords(words: HandWords, { positions, semitones }: StepFacts): string[] {
  if (positions !== null && Number.isInteger(positions) && positions !== 0) return [words.letters(Math.abs(positions), positions > 0)];
  const whole = Math.round(Math.abs(semitones));
  return whole === 0 ? [] : [words.semitones(whole, semitones > 0)];
}

/**
 * One step in a player's words: its trade name, how far and in what time, the reach, the slide. `nameOf` names notes.
 * Example: "shift with the arriving finger, a third up, 47 mm, needs 95 ms of 250 ms: work; slides audibly".
 */
export function stepWords(words: HandWords, step: StepFacts, nameOf: (id: string) => string): string {
  const moves = [step.stop ? words.stop[step.stop] : words.kind[step.kind], ...(step.shifts ? [...distanceWords(words, step), words.travel(step.mm, step.needsMs, step.availableMs, words.effort[step.effort])] : [])];
  const more = [
    ...(step.kind === 'extension' || step.kind === 'contraction' ? [words.reaches(words.finger(step.finger), step.reach)] : []),
    ...(step.stretch !== null && step.stretch.zone !== 'comfortable' ? [stretchWords(words, step.stretch)] : []),
    ...(step.followsAt === null ? [] : [words.follows(nameOf(step.followsAt))]),
    ...(step.slide < WORTH_A_WORD ? [] : [words.slide(step.audible)]),
    ...(!step.audible && step.slideAlone >= HEARD ? [words.slideAlone] : []),
  ];
  return [moves.join(', '), ...more].join('; ');
}

/** Example: "stretch 1-4 of 97 mm, stretched". */
export function stretchWords(words: HandWords, { fingers, mm, zone }: NonNullable<StepFacts['stretch']>): string {
  return words.stretch(fingers.join('-'), mm, words.zone[zone]);
}
