import { stretchesOf } from '../../../../core/music/stretches.ts';
import type { HairBow } from '../../../bowing/messages.ts';
import { words } from '../../../words/words.ts';

/** Measures in short: 33 to 40, 46. */
const list = (ordinals: readonly number[], name: (ordinal: number) => string): string =>
  stretchesOf(ordinals).map(({ from, to }) => (from === to ? name(from) : words.hair.through(name(from), name(to)))).join(', ');

/** What is missing on a bow, and which of `bows` drawn otherwise would mend it. `name`: the printed number of a measure. */
export function shortSentence(bow: HairBow, bows: readonly HairBow[], name: (ordinal: number) => string): string {
  const { short, direction, measure } = bow;
  if (!short) return '';
  const at = (pace: 'faster' | 'slower') => list(short.fix.flatMap((one) => (one.pace === pace ? [bows[one.bow]!.measure] : [])), name);
  const mend = short.kind === 'runs-out' ? words.hair.split : short.fix.length ? words.hair.mend(at('slower'), at('faster')) : words.hair.noMend;
  return `${words.hair[short.kind](direction, name(measure), short.by)} ${mend}`;
}

/** The picture of one line of music in words: how many bows, the longest, and each for which the hair does not last. */
export function hairSentences(shown: readonly HairBow[], bows: readonly HairBow[], name: (ordinal: number) => string): { lead: string; shared: string[]; short: string[] } {
  if (!shown.length) return { lead: words.hair.none, shared: [], short: [] };
  const length = ({ from, to }: HairBow) => Math.abs(to - from);
  const longest = shown.reduce((most, bow) => (length(bow) > length(most) ? bow : most));
  const short = shown.filter((bow) => bow.short);
  const shared = shown.filter((bow) => bow.shared);
  const last = short.length || shared.length ? '' : ` ${words.hair.lasts}`;
  return {
    lead: `${words.hair.bows(shown.length, name(longest.measure), Math.round(length(longest)))}${last}`,
    shared: shared.map(({ measure }) => words.hair.shared(name(measure))),
    short: short.map((bow) => shortSentence(bow, bows, name)),
  };
}
