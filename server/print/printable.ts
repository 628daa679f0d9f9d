import { UNITS } from '../../core/engraving/geometry.ts';
import type { LiftedWord } from '../../core/engraving/marks/words.ts';

/** What a group of the engraver's means for its texts: the stand's style sheet said as attributes, which every reader of SVG follows. */
const GROUPS: Record<string, string> = {
  dir: 'font-family="Alegreya Sans Italic"',
  dynam: 'font-family="Alegreya Sans Italic"',
  mNum: 'font-family="Alegreya Sans Italic"',
  tempo: 'font-family="Besley Bold"',
  reh: 'font-family="Besley Bold"',
  ending: 'font-family="Besley Bold"',
  fing: 'font-family="Besley Regular"',
  slur: 'fill="#000"',
  tie: 'fill="#000"',
};

/** Words that are slanted or heavy by themselves get the face that is, since a family here is one cut. */
const CUTS: [RegExp, string][] = [
  [/ font-style="italic"(?: font-weight="normal")?/g, ' font-family="Alegreya Sans Italic"'],
  [/ font-weight="(?:normal|bold)"/g, ''],
  [/ font-style="normal"/g, ''],
];

const STROKED: Record<string, Record<string, string>> = {
  path: { stroke: '#000' },
  polyline: { stroke: '#000', fill: 'none' },
  rect: { stroke: '#000', fill: 'none', 'stroke-width': '26' },
};

/**
 * The engraver's SVG of one system with everything a style sheet would say written as attributes, and words moved out of the way of marks:
 * those above the staff as `words` says, in their order, those below by `drop` staff spaces downward.
 */
export function printable(inner: string, words: readonly LiftedWord[], drop: number): string {
  let next = 0;
  const moved = (rest: string): string => {
    const by = rest.endsWith(' high') ? -(words[next++]?.lift ?? 0) : rest.endsWith(' low') ? drop : 0;
    return by ? ` transform="translate(0 ${(by * UNITS).toFixed(0)})"` : '';
  };
  const cut = CUTS.reduce((text, [pattern, by]) => text.replace(pattern, by), inner);
  return cut
    .replace(/<g([^>]*) class="(\w+)([^"]*)"/g, (_, before: string, name: string, rest: string) => `<g${before} class="${name}${rest}"${GROUPS[name] ? ` ${GROUPS[name]}` : ''}${moved(rest)}`)
    .replace(/<(path|polyline|rect)\b([^>]*)/g, (_, tag: string, own: string) => {
      const lacking = Object.entries(STROKED[tag]!).filter(([name]) => !own.includes(` ${name}=`));
      return `<${tag}${lacking.map(([name, value]) => ` ${name}="${value}"`).join('')}${own}`;
    });
}
