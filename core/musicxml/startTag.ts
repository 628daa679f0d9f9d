import type { XmlElement } from './element.ts';
import type { Edit } from './splice.ts';

const ATTRIBUTE = /\s+([^\s=/>]+)\s*=\s*("[^"]*"|'[^']*')/g;

/** Edits that give an element an attribute, or take it away (`value` null). `value` must need no escaping. */
export function attributeEdits(text: string, element: XmlElement, name: string, value: string | null): Edit[] {
  const written = value === null ? '' : ` ${name}="${value}"`;
  if (element.attributes[name] !== undefined) {
    for (const match of text.slice(element.start, element.startTagEnd).matchAll(ATTRIBUTE)) {
      const start = element.start + match.index;
      if (match[1] === name) return [{ start, end: start + match[0].length, text: written }];
    }
  }
  if (value === null) return [];
  const afterName = element.start + 1 + element.name.length;
  return [{ start: afterName, end: afterName, text: written }];
}

/** The attributes of a start tag as they are written, but for some names. */
export function attributesText(text: string, element: XmlElement, without: readonly string[]): string {
  return [...text.slice(element.start, element.startTagEnd).matchAll(ATTRIBUTE)].filter((match) => !without.includes(match[1] ?? '')).map(([whole]) => whole.replace(/^\s+/, ' ')).join('');
}
