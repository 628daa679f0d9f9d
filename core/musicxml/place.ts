import type { XmlElement } from './element.ts';
import { DocumentError, lineAt } from './fault.ts';

/** Where reading stands, for the person who is told that something is wrong there. */
export interface Place {
  /** The whole document. */
  text: string;
  part: string;
  /** As printed. */
  measure: string;
}

/** Stops reading at an element. The sentence should say what is wrong; where it is is added here. */
export function failAt(place: Place, element: XmlElement, code: string, sentence: string): never {
  const line = lineAt(place.text, element.start);
  throw new DocumentError({
    code,
    text: `Part ${place.part}, measure ${place.measure || 'without number'} (line ${line}): ${sentence}`,
    line,
    part: place.part,
    measure: place.measure,
    element: element.name,
  });
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)$/;

/** A decimal number as MusicXML writes it; stops reading where the text is none. */
export function numberIn(place: Place, element: XmlElement): number {
  const text = element.text.trim();
  if (!NUMBER.test(text) || text.length > 20) failAt(place, element, 'NOT_A_NUMBER', `<${element.name}> should hold a number and holds "${text.slice(0, 40)}". Correct it in the score and export again.`);
  return Number(text);
}
