import type { XmlElement } from './element.ts';

export interface Words {
  text: string;
  placement: 'above' | 'below';
}

/** What is to be added to one `<note>` and what is to be kept in it without being shown. */
export interface Addition {
  technical: string[];
  /** Slur elements; stops come before starts. */
  slurStops: string[];
  slurStarts: string[];
  /** Words before the note. */
  words: Words[];
  /** Printed children of `technical` that a mark supersedes. */
  hiddenTechnical: Set<XmlElement>;
  /** Printed slur ends that a mark supersedes. */
  hiddenSlurs: Set<XmlElement>;
}

/** The additions of a document, note element by note element. */
export class Additions {
  private readonly byElement = new Map<XmlElement, Addition>();

  at(element: XmlElement): Addition {
    const known = this.byElement.get(element);
    if (known) return known;
    const fresh: Addition = { technical: [], slurStops: [], slurStarts: [], words: [], hiddenTechnical: new Set(), hiddenSlurs: new Set() };
    this.byElement.set(element, fresh);
    return fresh;
  }

  all(): IterableIterator<[XmlElement, Addition]> {
    return this.byElement.entries();
  }
}
