import { UNITS } from '../../core/engraving/geometry.ts';
import type { LoweredWord } from '../../core/engraving/marks/lowWords.ts';
import type { LiftedWord } from '../../core/engraving/marks/words.ts';
import type { Face } from './faces.ts';

/** Which face the engraver's groups of words are set in, as the stand's style sheet says. */
const FACES: Record<string, Face> = {
  dir: 'Alegreya Sans Italic',
  dynam: 'Alegreya Sans Italic',
  tempo: 'Besley Bold',
  reh: 'Besley Bold',
  ending: 'Besley Bold',
  fing: 'Besley Regular',
};
const FILLED = new Set(['slur', 'tie']);

/** The face of words of a kind. */
export const faceOf = (name: string): Face => FACES[name] ?? 'Alegreya Sans';

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
 * those above the staff as `words` says, those below as `lowered`, in the order of the drawing.
 */
export function printable(inner: string, words: readonly LiftedWord[], lowered: readonly LoweredWord[]): string {
  let [high, low] = [0, 0];
  const moved = (rest: string): string => {
    const word = rest.endsWith(' high') ? words[high++] : undefined;
    const [x, y] = word ? [-word.back, -word.lift] : [0, rest.endsWith(' low') ? lowered[low++]!.drop : 0];
    return x || y ? ` transform="translate(${(x * UNITS).toFixed(0)} ${(y * UNITS).toFixed(0)})"` : '';
  };
  const cut = CUTS.reduce((text, [pattern, by]) => text.replace(pattern, by), inner);
  return cut
    .replace(/<g([^>]*) class="(\w+)([^"]*)"/g, (_, before: string, name: string, rest: string) => `<g${before} class="${name}${rest}"${FACES[name] ? ` font-family="${FACES[name]}"` : FILLED.has(name) ? ' fill="#000"' : ''}${moved(rest)}`)
    .replace(/<(path|polyline|rect)\b([^>]*)/g, (_, tag: string, own: string) => {
      const attributes = tag === 'path' && !own.includes('C') ? { ...STROKED.path, fill: 'none' } : STROKED[tag]!;
      const lacking = Object.entries(attributes).filter(([name]) => !own.includes(` ${name}=`));
      return `<${tag}${lacking.map(([name, value]) => ` ${name}="${value}"`).join('')}${own}`;
    });
}
