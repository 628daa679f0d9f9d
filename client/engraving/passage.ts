import type { SystemRange } from '../../core/engraving/systemRanges.ts';

const MEASURE = /<measure\b[^>]*\bid="m(\d+)"[^>]*>[\s\S]*?<\/measure>/g;
/** In the order MusicXML wants them. */
const STANDING = ['divisions', 'key', 'staves', 'clef', 'transpose'] as const;

const lastOf = (text: string, name: string): string => [...text.matchAll(new RegExp(`<${name}\\b[^>]*>[\\s\\S]*?</${name}>`, 'g'))].at(-1)?.[0] ?? '';

type Standing = Record<(typeof STANDING)[number], string>;

/** A stretch without its line breaks, and what stands at its end. What stands at its beginning is said where it is not `known`; `opening` goes first into it. */
function stretchOf(measures: readonly RegExpMatchArray[], { first, last }: SystemRange, opening: string, known: Partial<Standing>): { text: string; standing: Partial<Standing> } {
  const before = measures.filter(([, ordinal]) => Number(ordinal) < first).map(([measure]) => measure).join('');
  const kept = measures
    .filter(([, ordinal]) => Number(ordinal) >= first && Number(ordinal) <= last)
    .map(([measure]) => measure.replace(/<print\b[^>]*(?:\/>|>[\s\S]*?<\/print>)/g, ''))
    .join('\n');
  // What the passage says itself as it begins is not said twice: the engraver would take the first for all of it.
  const own = /^<measure\b[^>]*>\s*<attributes\b[\s\S]*?<\/attributes>/.exec(kept)?.[0] ?? '';
  const said = STANDING.filter((name) => !own.includes(`<${name}`)).map((name) => [name, lastOf(before, name)] as const);
  // Said again, the engraver would announce it at the end of the line before.
  const fresh = said.filter(([name, text]) => text !== known[name]).map(([, text]) => text).join('');
  const begin = opening + (fresh ? `<attributes>${fresh}</attributes>` : '');
  const standing = Object.fromEntries(said.map(([name, text]) => [name, lastOf(kept, name) || text]).concat(STANDING.filter((name) => own.includes(`<${name}`)).map((name) => [name, lastOf(kept, name)])));
  return { text: begin ? kept.replace(/<measure\b[^>]*>/, (tag) => tag + begin) : kept, standing };
}

/**
 * Stretches of an engraver's text of one part, each a line: with the clef and key in force. Of several clefs only the last before a stretch is repeated.
 * Stretches rise and do not overlap. Example: `linesOf(text, [{ first: 3, last: 4 }, { first: 9, last: 9 }])` is two lines of three measures.
 */
export function linesOf(text: string, lines: readonly SystemRange[]): string {
  const measures = [...text.matchAll(MEASURE)];
  const first = measures[0];
  const last = measures.at(-1);
  if (!first || !last) return text;
  let known: Partial<Standing> = {};
  const kept = lines.map((line, i) => {
    const stretch = stretchOf(measures, line, i ? '<print new-page="yes"/>' : '', known);
    known = stretch.standing;
    return stretch.text;
  });
  return text.slice(0, first.index) + kept.join('\n') + text.slice(last.index + last[0].length);
}

/** Measures `from` to `to` of an engraver's text of one part, on one line. */
export const passageOf = (text: string, from: number, to: number): string => linesOf(text, [{ first: from, last: to }]);

/** The first `count` measures of an engraver's text of one part; null where that is nearly all of it. */
export function beginningOf(text: string, count: number): string | null {
  const measures = [...text.matchAll(MEASURE)];
  const next = measures[count];
  const last = measures.at(-1);
  if (!next || !last || measures.length < 1.5 * count) return null;
  return text.slice(0, next.index) + text.slice(last.index + last[0].length);
}
