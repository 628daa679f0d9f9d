import type { MarkValue } from '../music/mark.ts';

/** What MusicXML has no element for is written as `other-technical` with these words. Our own convention. */
const other = (text: string, smufl = '') => `<other-technical${smufl && ` smufl="${smufl}"`}>${text}</other-technical>`;

/**
 * Children of `<technical>` that say a mark; none for text, which is a direction, and for rubbing out.
 * Bow marks stand above. Source: musicxml-4 (technical), SMuFL for the sign of a bow change.
 * Example: finger 3 with substitution 1 gives two `<fingering>` elements.
 */
export function technicalXml(value: MarkValue): string[] {
  switch (value.kind) {
    case 'finger':
      return [
        value.finger === 'thumb' ? '<thumb-position/>' : `<fingering>${value.finger}</fingering>`,
        ...(value.substitution === undefined ? [] : [`<fingering substitution="yes">${value.substitution === 'thumb' ? 'T' : value.substitution}</fingering>`]),
      ];
    case 'string':
      return [`<string>${value.string}</string>`];
    case 'harmonic':
      return [`<harmonic><${value.harmonic}/></harmonic>`];
    case 'bow':
      return [`<${value.bow}-bow placement="above"/>`];
    case 'change':
      return [other(value.after === 0 ? 'bow change' : `bow change after ${value.after}`, 'stringsChangeBowDirection')];
    case 'reach':
      return [other(value.reach)];
    case 'retake':
    case 'hooked':
      return [other(value.kind)];
    case 'slur':
      return [other(`slur ${value.slur}`)];
    case 'text':
    case 'none':
      return [];
  }
}
