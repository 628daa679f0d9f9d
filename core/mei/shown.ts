import type { XmlElement } from '../musicxml/element.ts';

/** Wrappers that only say how sure an editor is: what is in them is read as if they were not there. */
const CLEAR = new Set(['add', 'supplied', 'unclear', 'corr', 'reg', 'expan', 'damage', 'lem', 'rdg', 'restore', 'sic', 'orig', 'abbr', 'subst', 'handShift']);
/** Of several readings one is played: the first of these that is there. */
const PREFERRED = ['lem', 'corr', 'reg', 'expan', 'rdg', 'orig', 'sic', 'abbr'];

/**
 * Children of an MEI element as they are played: of variants and choices the preferred one, deletions left out, editorial wrappers opened.
 * Source: MEI Guidelines 5.1, chapter 11 (editorial markup). Example: `<app><lem>x</lem><rdg>y</rdg></app>` is x.
 */
export function shown(element: XmlElement): XmlElement[] {
  return element.children.flatMap((child) => {
    if (child.name === 'app' || child.name === 'choice') {
      const name = PREFERRED.find((preferred) => child.children.some((reading) => reading.name === preferred));
      const reading = child.children.find((one) => one.name === name);
      return reading ? shown(reading) : [];
    }
    if (child.name === 'del' || child.name === 'ossia') return [];
    return CLEAR.has(child.name) ? shown(child) : [child];
  });
}

/** Played children of that name. */
export const shownNamed = (element: XmlElement, name: string): XmlElement[] => shown(element).filter((child) => child.name === name);

const ENTITIES: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

/** All text in an element in the order of the document, whatever renditions it stands in. `text` is the document. Example: `<dir><rend>poco</rend> rit.</dir>` is "poco rit.". */
export function wordsOf(element: XmlElement, text: string): string {
  const plain = text.slice(element.startTagEnd, element.endTagStart).replace(/<!--[\s\S]*?-->|<\/?(lb|p)\b[^>]*>/g, ' ').replace(/<[^>]*>/g, '');
  const read = plain.replace(/&(?:#x([0-9a-f]+)|#(\d+)|(\w+));/gi, (whole, hex: string | undefined, decimal: string | undefined, name: string | undefined) => {
    if (name !== undefined) return ENTITIES[name] ?? whole;
    const code = hex === undefined ? Number(decimal) : parseInt(hex, 16);
    return code <= 0x10ffff ? String.fromCodePoint(code) : '';
  });
  return read.replace(/\s+/g, ' ').trim();
}

/** The id an MEI reference points at. Example: `pointed('#n1')` is "n1". */
export const pointed = (reference: string | undefined): string | null => (reference?.startsWith('#') ? reference.slice(1) : null);

/** An element's own id. */
export const idOf = (element: XmlElement): string | null => element.attributes['xml:id'] ?? null;
