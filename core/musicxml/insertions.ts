import type { Addition, Words } from './additions.ts';
import { child, childrenNamed, isHidden, type XmlElement } from './element.ts';
import { xmlText } from './escape.ts';
import { deeper, leadOf } from './indentation.ts';
import type { Edit } from './splice.ts';

/** What may follow `notations` in a `note` (MusicXML 4.0, note). */
const AFTER_NOTATIONS = new Set(['lyric', 'play', 'listen']);

/** The edits of one note: what is added stands in the manner of its neighbours, on lines of its own or not. */
export function noteEdits(text: string, note: XmlElement, addition: Addition): Edit[] {
  const { technical } = addition;
  const hidden = [...addition.hiddenTechnical, ...addition.hiddenSlurs];
  const slurs = [...addition.slurStops, ...addition.slurStarts];
  const edits: Edit[] = [];
  const notations = childrenNamed(note, 'notations').find((element) => !isHidden(element));
  const shownTechnical = childrenNamed(note, 'notations').filter((element) => !isHidden(element)).flatMap((element) => child(element, 'technical') ?? [])[0];
  const noteLead = leadOf(text, note);
  const childLead = note.children[0] ? leadOf(text, note.children[0]) : '';
  const inside = (lead: string) => deeper(lead, noteLead, childLead);
  const technicalBlock = (lead: string) => (technical.length ? block('technical', '', lead, technical.map((xml) => inside(lead) + xml)) : '');

  if (shownTechnical && technical.length) edits.push(append(text, shownTechnical, technical, inside));
  const rest = shownTechnical ? [] : [technicalBlock];
  const plain = slurs.map((xml) => () => xml);
  if (notations && (plain.length || (rest.length && technical.length))) {
    const lead = notations.children.at(-1) ? leadOf(text, notations.children.at(-1) ?? notations) : inside(leadOf(text, notations));
    const pieces = [...(technical.length ? rest : []), ...plain].map((piece) => piece(lead));
    edits.push(append(text, notations, pieces, inside));
  }
  const fresh: string[] = [];
  if (!notations && (technical.length || plain.length)) {
    const lead = inside(childLead);
    const pieces = [...(technical.length ? [technicalBlock(lead)] : []), ...slurs].map((xml) => lead + xml);
    fresh.push(childLead + block('notations', '', childLead, pieces));
  }
  const kept = hiddenBlock(text, hidden, childLead, inside);
  if (kept) fresh.push(childLead + kept);
  if (fresh.length) {
    const before = note.children.findLast(({ name }) => !AFTER_NOTATIONS.has(name));
    const at = before?.end ?? note.startTagEnd;
    edits.push({ start: at, end: at, text: fresh.join('') });
  }
  for (const element of hidden) edits.push({ start: element.start - leadOf(text, element).length, end: element.end, text: '' });
  return edits;
}

/**
 * What is no longer shown stays in the document as the words of an element nobody draws: programs that pass over `print-object` on notations would
 * else show the old mark beside the new one, and half a slur.
 */
function hiddenBlock(text: string, elements: readonly XmlElement[], lead: string, inside: (lead: string) => string): string {
  if (!elements.length) return '';
  const inner = inside(lead);
  const pieces = elements.map(({ start, end }) => `${inner}<other-notation type="single" print-object="no">${xmlText(text.slice(start, end))}</other-notation>`);
  return block('notations', ' print-object="no"', lead, pieces);
}

/** An element with the given pieces, each with its own lead; `lead` stands before its end tag. */
function block(name: string, attributes: string, lead: string, pieces: readonly string[]): string {
  return `<${name}${attributes}>${pieces.join('')}${lead}</${name}>`;
}

/** Adds pieces behind the last child of an element, opening it where its tag closes itself. */
function append(text: string, parent: XmlElement, pieces: readonly string[], inside: (lead: string) => string): Edit {
  const last = parent.children.at(-1);
  if (last) {
    const lead = leadOf(text, last);
    return { start: last.end, end: last.end, text: pieces.map((piece) => lead + piece).join('') };
  }
  const lead = leadOf(text, parent);
  const content = pieces.map((piece) => inside(lead) + piece).join('') + lead;
  if (text[parent.startTagEnd - 2] !== '/') return { start: parent.startTagEnd, end: parent.endTagStart, text: content };
  return { start: parent.startTagEnd - 2, end: parent.end, text: `>${content}</${parent.name}>` };
}

/** The edit that puts words above or below the staff before a note (its chord's first note). */
export function wordsEdit(text: string, note: XmlElement, words: readonly Words[]): Edit {
  const lead = leadOf(text, note);
  const childLead = note.children[0] ? leadOf(text, note.children[0]) : '';
  const inner = deeper(lead, lead, childLead);
  const innermost = deeper(inner, lead, childLead);
  const ties = ['voice', 'staff'].flatMap((name) => {
    const element = child(note, name);
    return element ? [inner + text.slice(element.start, element.end)] : [];
  });
  const directions = words.map(({ text: word, placement }) => {
    const type = inner + block('direction-type', '', inner, [`${innermost}<words>${word}</words>`]);
    return block('direction', ` placement="${placement}"`, lead, [type, ...ties]) + lead;
  });
  return { start: note.start, end: note.start, text: directions.join('') };
}
