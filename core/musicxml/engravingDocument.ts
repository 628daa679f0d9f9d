import type { Measure, Part } from '../music/part.ts';
import { childrenNamed, isHidden, type XmlElement } from './element.ts';
import type { DocumentFault } from './fault.ts';
import { layoutOf, type MeasureSource, type PartSource } from './layout.ts';
import { parseXml } from './parse.ts';
import { DocumentError } from './fault.ts';
import { type Edit, splice } from './splice.ts';
import { xmlText } from './escape.ts';
import { attributeEdits, attributesText } from './startTag.ts';
import { borrowedDirections } from './systemDirections.ts';

export type EngravingDocument = { ok: true; text: string } | { ok: false; fault: DocumentFault };

/**
 * One part of a score as a small MusicXML document for the engraver.
 * Partwise whatever the source was; notes carry the ids of `stored`, measures "m" and their ordinal, nothing else has an id; other parts, page
 * layout, line breaks and hidden notations are left out; tempo and rehearsal marks that stand only above another part are brought in.
 * Bow marks are put above the staff: engravers turn them upside down below it.
 * Refuses a source that cannot be read or has no such part.
 * Example: `engravingDocument(text, 'P1', stored)`.
 */
export function engravingDocument(text: string, partId: string, stored: Part): EngravingDocument {
  const parsed = parseXml(text);
  if (!parsed.ok) return parsed;
  try {
    const layout = layoutOf(parsed.root, text);
    const source = layout.find(({ id }) => id === partId);
    if (!source) return { ok: false, fault: { code: 'NO_SUCH_PART', text: `The score has no part "${partId}". Import it again.`, part: partId } };
    return { ok: true, text: compose(text, source, layout.filter((part) => part !== source), stored) };
  } catch (error) {
    if (error instanceof DocumentError) return { ok: false, fault: error.fault };
    throw error;
  }
}

function compose(text: string, source: PartSource, others: readonly PartSource[], stored: Part): string {
  const id = xmlText(source.id);
  const listed = source.listed ? splice(text, attributeEdits(text, source.listed, 'id', id), source.listed.start, source.listed.end) : `<score-part id="${id}"><part-name/></score-part>`;
  const measures = source.measures.map((measure, i) => measureText(text, measure, borrowedDirections(text, measure.content, others.map(({ measures: theirs }) => theirs[i]?.content)), stored.measures[i], i + 1));
  return `<?xml version="1.0" encoding="UTF-8"?>
<score-partwise version="4.0">
<part-list>${listed}</part-list>
<part id="${id}">
${measures.join('\n')}
</part>
</score-partwise>
`;
}

function measureText(text: string, { content, number, implicit }: MeasureSource, borrowed: string, stored: Measure | undefined, ordinal: number): string {
  if (!content) return `<measure number="${xmlText(number)}" id="m${ordinal}"/>`;
  const own = content.name === 'measure' ? attributesText(text, content, ['id']) : ` number="${xmlText(number)}"${implicit ? ' implicit="yes"' : ''}`;
  const edits: Edit[] = [];
  let note = 0;
  for (const element of content.children) {
    if (element.name === 'print') {
      edits.push({ start: element.start, end: element.end, text: '' });
      continue;
    }
    dropIds(text, element, edits, element.name === 'note' ? (stored?.notes[note++]?.id ?? null) : null);
  }
  const first = content.children.find(({ name }) => name !== 'attributes' && name !== 'print');
  if (borrowed && first) edits.unshift({ start: first.start, end: first.start, text: borrowed });
  return `<measure${own} id="m${ordinal}">${splice(text, edits, content.startTagEnd, content.endTagStart)}</measure>`;
}

/** Edits for one element and all it holds: its id becomes `id`, inner ids and hidden notations go, bow marks go above. */
function dropIds(text: string, element: XmlElement, edits: Edit[], id: string | null): void {
  edits.push(...attributeEdits(text, element, 'id', id));
  if (element.name === 'up-bow' || element.name === 'down-bow') edits.push(...attributeEdits(text, element, 'placement', 'above'));
  const hidden = element.name === 'note' ? childrenNamed(element, 'notations').filter(isHidden) : [];
  for (const part of element.children) {
    if (hidden.includes(part)) edits.push({ start: part.start, end: part.end, text: '' });
    else dropIds(text, part, edits, null);
  }
}
