import type { Note, TechnicalMark } from '../music/part.ts';
import { childrenNamed, isHidden, type XmlElement } from './element.ts';

/** Attributes of technical marks that say how it looks or where it stands, not what it means. */
const LOOKS = /^(default|relative)-|^(font|color|halign|valign|size|id|justify|letter-spacing|line-height|print-object)/;

type Notated = Pick<Note, 'slurs' | 'ties' | 'technical' | 'articulations' | 'ornaments'>;

/** Ornament elements that belong to another one. */
const DEPENDENT = new Set(['accidental-mark', 'wavy-line']);
/** Children of `notations` that are ornaments in the reader's sense. */
const DIRECT = new Set(['fermata', 'arpeggiate', 'non-arpeggiate', 'slide', 'glissando']);

/** Reads slurs, ties, technical marks, articulations and ornaments of a `<note>`. A tie counts when it is written (`tied`) or sounds (`tie`). */
export function readNotations(note: XmlElement): Notated {
  const read: Notated = { slurs: [], ties: [], technical: [], articulations: [], ornaments: [] };
  const ties = new Set<string>(childrenNamed(note, 'tie').map((tie) => tie.attributes.type ?? ''));
  for (const notations of childrenNamed(note, 'notations')) {
    const hidden = isHidden(notations);
    for (const element of notations.children) {
      if (element.name === 'slur') addSlur(element, hidden, read);
      else if (element.name === 'tied') ties.add(element.attributes.type ?? '');
      else if (element.name === 'technical') for (const mark of element.children) read.technical.push(technicalMark(mark, hidden));
      else if (element.name === 'articulations') for (const mark of element.children) read.articulations.push(mark.name);
      else if (element.name === 'ornaments') for (const mark of element.children) addOrnament(mark, read);
      else if (DIRECT.has(element.name) && element.attributes.type !== 'stop') read.ornaments.push(element.name);
    }
  }
  for (const type of ['stop', 'start'] as const) if (ties.has(type)) read.ties.push(type);
  return read;
}

function addSlur(element: XmlElement, hidden: boolean, read: Notated): void {
  const { type, number } = element.attributes;
  if (type !== 'start' && type !== 'stop' && type !== 'continue') return;
  read.slurs.push({ type, number: Number(number ?? 1) || 1, ...(hidden ? { hidden: true as const } : {}) });
}

function addOrnament(mark: XmlElement, read: Notated): void {
  if (mark.name === 'tremolo') read.ornaments.push(`tremolo:${mark.text.trim()}`);
  else if (!DEPENDENT.has(mark.name)) read.ornaments.push(mark.name);
}

/** One child of `<technical>` as a value. Its children carry meaning by name ("natural"), their text is kept where they have one. */
export function technicalMark(element: XmlElement, hidden: boolean): TechnicalMark {
  const detail: Record<string, string> = {};
  for (const [name, value] of Object.entries(element.attributes)) if (!LOOKS.test(name)) detail[name] = value;
  for (const part of element.children) detail[part.name] = part.text.trim();
  return { name: element.name, value: element.text, ...(Object.keys(detail).length ? { detail } : {}), ...(hidden ? { hidden: true } : {}) };
}
