import type { MarkValue } from '../music/mark.ts';

/** What MusicXML has no element for is written as `other-technical` with these words. Our own convention. */
const other = (text: string, place: string, smufl = '') => `<other-technical${place}${smufl && ` smufl="${smufl}"`}>${text}</other-technical>`;

/** On which side of the staff a mark is said to stand; null where that is left to whoever engraves it. */
export type Side = 'above' | 'below' | null;

/**
 * Children of `<technical>` that say a mark; none for text, which is a direction, and for rubbing out.
 * Bow marks stand above unless another side is said. Source: musicxml-4 (technical), SMuFL for the sign of a bow change.
 * Example: finger 3 with substitution 1 gives two `<fingering>` elements.
 */
export function technicalXml(value: MarkValue, side: Side = null): string[] {
  const place = side ? ` placement="${side}"` : '';
  switch (value.kind) {
    case 'finger':
      return [
        value.finger === 'thumb' ? `<thumb-position${place}/>` : `<fingering${place}>${value.finger}</fingering>`,
        ...(value.substitution === undefined ? [] : [`<fingering substitution="yes"${place}>${value.substitution === 'thumb' ? 'T' : value.substitution}</fingering>`]),
      ];
    case 'string':
      return [`<string${place}>${value.string}</string>`];
    case 'harmonic':
      return [`<harmonic${place}><${value.harmonic}/></harmonic>`];
    case 'bow':
      return [`<${value.bow}-bow placement="${side ?? 'above'}"/>`];
    case 'change':
      return [other(value.after === 0 ? 'bow change' : `bow change after ${value.after}`, place, 'stringsChangeBowDirection')];
    case 'reach':
      return [other(value.reach, place)];
    case 'retake':
    case 'hooked':
      return [other(value.kind, place)];
    case 'slur':
      return [other(`slur ${value.slur}`, place)];
    case 'text':
    case 'none':
      return [];
  }
}
