import type { Mark } from '../../core/music/mark.ts';
import { engravingDocument, type EngravingDocument } from '../../core/musicxml/engravingDocument.ts';
import { mergeMarks } from '../../core/musicxml/mergeMarks.ts';
import type { PrintOrder } from './order.ts';

/** The part as the engraver gets it, with these marks written into it and what they replace taken away. */
export function mergedText(text: string, { part, stored }: Pick<PrintOrder, 'part' | 'stored'>, marks: readonly Mark[]): EngravingDocument {
  // The part is cut out first, so that a whole symphony is read once, not once more for the marks.
  const alone = engravingDocument(text, part, stored);
  if (!alone.ok) return alone;
  const merged = mergeMarks(alone.text, { parts: [{ part, ids: stored, marks }], superseded: 'hide', expressible: () => true });
  return merged.ok ? engravingDocument(merged.text, part, stored) : merged;
}
