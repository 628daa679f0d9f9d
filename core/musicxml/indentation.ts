import type { XmlElement } from './element.ts';

/** The line break and blanks before an element that begins its line; "" where it does not. Example: before `<b/>` in "<a>\r\n  <b/>" it is "\r\n  ". */
export function leadOf(text: string, element: XmlElement): string {
  let at = element.start;
  while (at > 0 && (text[at - 1] === ' ' || text[at - 1] === '\t')) at--;
  if (text[at - 1] === '\n') at -= text[at - 2] === '\r' ? 2 : 1;
  else if (text[at - 1] === '\r') at -= 1;
  else return '';
  return text.slice(at, element.start);
}

/** One step deeper, as deep as `inner` stands in `outer`; two blanks where that cannot be seen. */
export function deeper(lead: string, outer: string, inner: string): string {
  if (!lead) return '';
  const step = outer && inner.startsWith(outer) ? inner.slice(outer.length) : '';
  return lead + (step || '  ');
}
