import { childrenNamed, child, descend, textOf, type XmlElement } from './element.ts';
import { DocumentError, lineAt } from './fault.ts';

/** One measure of one part as it stands in the document. */
export interface MeasureSource {
  /** As printed; "" where there is none. */
  number: string;
  implicit: boolean;
  /** The element that holds the notes: `measure` in a partwise document, `part` in a timewise one; undefined where a timewise measure leaves the part out. */
  content: XmlElement | undefined;
}

export interface PartSource {
  id: string;
  name: string;
  /** `score-part` of the part list, where there is one. */
  listed: XmlElement | undefined;
  measures: MeasureSource[];
}

/**
 * Finds the parts and their measures in a partwise or timewise document.
 * A part without an id takes the id at its place in the part list; a part that is not listed is kept, with its id as name.
 * Throws a DocumentError when the root is no score or when two parts share an id.
 */
export function layoutOf(root: XmlElement, text: string): PartSource[] {
  const timewise = root.name === 'score-timewise';
  if (!timewise && root.name !== 'score-partwise') {
    const hint = root.name === 'opus' ? 'It is a list of scores (opus): bring the scores one by one.' : 'Export the score as MusicXML and bring that file.';
    throw new DocumentError({ code: 'NOT_A_SCORE', text: `The file is XML but no score: it begins with <${root.name.slice(0, 60)}>. ${hint}`, line: lineAt(text, root.start), element: root.name });
  }
  const list = child(root, 'part-list');
  const listed = list ? childrenNamed(list, 'score-part') : [];
  const parts = timewise ? timewiseParts(root) : partwiseParts(root);
  const seen = new Set<string>();
  return parts.map(({ element, measures }, index) => {
    const id = (element.attributes.id ?? listed[index]?.attributes.id ?? `P${index + 1}`).trim();
    if (seen.has(id)) throw new DocumentError({ code: 'PART_TWICE', text: `Two parts are both called "${id}" (line ${lineAt(text, element.start)}). Give them different ids, or export the score again.`, line: lineAt(text, element.start), part: id, element: 'part' });
    seen.add(id);
    const entry = listed.find((candidate) => candidate.attributes.id?.trim() === id);
    return { id, name: nameOf(entry, id), listed: entry, measures };
  });
}

interface Found {
  element: XmlElement;
  measures: MeasureSource[];
}

function measureOf(measure: XmlElement, content: XmlElement | undefined): MeasureSource {
  return { number: measure.attributes.number ?? '', implicit: measure.attributes.implicit === 'yes', content };
}

function partwiseParts(root: XmlElement): Found[] {
  return childrenNamed(root, 'part').map((element) => ({ element, measures: childrenNamed(element, 'measure').map((measure) => measureOf(measure, measure)) }));
}

function timewiseParts(root: XmlElement): Found[] {
  const measures = childrenNamed(root, 'measure');
  const order = new Map<string, XmlElement>();
  const byMeasure = measures.map((measure) => {
    const here = new Map<string, XmlElement>();
    for (const part of childrenNamed(measure, 'part')) {
      const id = part.attributes.id ?? '';
      here.set(id, part);
      if (!order.has(id)) order.set(id, part);
    }
    return here;
  });
  return [...order].map(([id, element]) => ({ element, measures: measures.map((measure, i) => measureOf(measure, byMeasure[i]?.get(id))) }));
}

function nameOf(listed: XmlElement | undefined, id: string): string {
  if (!listed) return id;
  const name = textOf(listed, 'part-name') || descend(listed, 'score-instrument', 'instrument-name')?.text.trim() || '';
  return name.replace(/\s+/g, ' ');
}
