import type { SystemRange } from './systemRanges.ts';

/** An engraver's text of one part broken into the lines of another: each of `ranges` begins a line, which is a page to the engraver. Its own breaks are not kept. */
export function brokenAt(text: string, ranges: readonly SystemRange[]): string {
  const begins = new Set(ranges.slice(1).map(({ first }) => String(first)));
  return text.replace(/<print\b[^>]*(?:\/>|>[\s\S]*?<\/print>)/g, '').replace(/<measure\b[^>]*\bid="m(\d+)"[^>]*(?<!\/)>/g, (opening, ordinal: string) => (begins.has(ordinal) ? `${opening}<print new-page="yes"/>` : opening));
}
