import type { Mark, MarkValue } from '../../core/music/mark.ts';
import { slotOf } from '../../core/music/mark.ts';
import type { EngravingDocument } from '../../core/musicxml/engravingDocument.ts';
import { mergedText } from './mergedText.ts';
import type { PrintOrder } from './order.ts';

/** A slur is changed in the music itself; every other mark is drawn by us, so that what was printed in its place is only taken away. */
function underneath({ note, value }: Mark): Mark {
  if (value.kind === 'slur' || value.kind === 'none') return { note, value };
  const cleared: MarkValue = { kind: 'none', slot: slotOf(value), ...(value.kind === 'change' ? { after: value.after } : {}) };
  return { note, value: cleared };
}

/** True for a mark that is in the music as engraved and needs no sign. */
export const isInTheMusic = ({ value, seats }: PrintOrder['marks'][number]): boolean => value.kind === 'none' || (value.kind === 'slur' && seats === 'all');

/** The part as the engraver gets it: slurs as agreed for everybody on this copy, and nothing printed where a mark of ours will stand. */
export function markedText(text: string, order: Pick<PrintOrder, 'part' | 'stored' | 'marks'>): EngravingDocument {
  return mergedText(text, order, order.marks.filter((mark) => mark.value.kind !== 'slur' || mark.seats === 'all').map(underneath));
}
