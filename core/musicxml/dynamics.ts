import type { XmlElement } from './element.ts';

const LEVEL = /^(p{1,6}|f{1,6}|mp|mf|n)$/;
/** What remains in force after a dynamic that begins otherwise. Common practice, no source. */
const AFTER: Record<string, string> = { fp: 'p', sfp: 'p', sfpp: 'pp', sfzp: 'p', pf: 'f' };

/**
 * The level that a `<dynamics>` leaves in force; undefined when it only stresses one note (sf, sfz, fz, rf, rfz, sffz).
 * Example: `<dynamics><fp/></dynamics>` leaves "p".
 */
export function levelOf(dynamics: XmlElement): string | undefined {
  for (const mark of dynamics.children.toReversed()) {
    const words = mark.name === 'other-dynamics' ? mark.text.toLowerCase().split(/[^a-z]+/).toReversed() : [mark.name];
    for (const word of words) {
      if (LEVEL.test(word)) return word;
      if (AFTER[word]) return AFTER[word];
    }
  }
  return undefined;
}
