import { compareFingerings } from '../compare.ts';
import type { PlayedLine } from '../explain/playedLine.ts';
import type { Stretch } from '../explain/stretches.ts';
import type { WithinHand } from '../explain/withinHand.ts';
import type { PlainFingering } from '../output.ts';
import type { HandWords } from './handWords.ts';
import { noteNames } from './noteNames.ts';
import { passageWords } from './passageWords.ts';

/**
 * What a hand cannot reach in a fingering, and what it plays instead: a sentence each, the caution last.
 * Example: "For this hand the stretch 1-4 of 97 mm to the F sharp is too wide. Measure 1: instead, it crosses to the E string at the F sharp."
 */
export function withinHandWords(words: HandWords, played: PlayedLine, first: PlainFingering, instead: WithinHand): string[] {
  const nameOf = noteNames(words, played.line);
  const tooWide = ({ fingers, mm, notes }: Stretch): string => words.hand.tooWide(fingers.join('-'), mm, nameOf(notes[1]));
  const { differences } = compareFingerings(played, first, instead.fingering);
  return [
    ...instead.beyond.map(tooWide),
    ...differences.map(({ measures, b }) => words.hand.instead(words.measures(...measures), passageWords(words, played, b, nameOf))),
    ...(instead.lost.length > 0 ? [words.hand.loses(instead.lost.map(nameOf))] : instead.stillBeyond.length === 0 ? [words.hand.keeps] : []),
    ...(instead.stillBeyond.length > 0 ? [words.hand.noWay(instead.stillBeyond.map(({ notes }) => nameOf(notes[1])))] : []),
    words.caution,
  ];
}
