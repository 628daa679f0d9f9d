/**
 * One XML element with where it stands in the text it was read from.
 * Offsets count UTF-16 units: `text.slice(start, end)` is the whole element, `text.slice(startTagEnd, endTagStart)` its content.
 */
export interface XmlElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly XmlElement[];
  /** Character data directly inside, joined; white space alone counts as none. */
  readonly text: string;
  readonly start: number;
  readonly startTagEnd: number;
  /** Equal to `startTagEnd` where the tag closes itself. */
  readonly endTagStart: number;
  readonly end: number;
}

/** First child of that name. Example: `child(note, 'pitch')`. */
export function child(element: XmlElement, name: string): XmlElement | undefined {
  return element.children.find((candidate) => candidate.name === name);
}

/** All children of that name, in document order. */
export function childrenNamed(element: XmlElement, name: string): XmlElement[] {
  return element.children.filter((candidate) => candidate.name === name);
}

/** Text of the first child of that name without surrounding white space; undefined where there is none. */
export function textOf(element: XmlElement, name: string): string | undefined {
  return child(element, name)?.text.trim();
}

/** First element reached by following the names downwards. Example: `descend(score, 'work', 'work-title')`. */
export function descend(element: XmlElement, ...path: string[]): XmlElement | undefined {
  let here: XmlElement | undefined = element;
  for (const name of path) here = here && child(here, name);
  return here;
}

/** True for `print-object="no"`: kept in the document, not shown. */
export function isHidden(element: XmlElement): boolean {
  return element.attributes['print-object'] === 'no';
}
