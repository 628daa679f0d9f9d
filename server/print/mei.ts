import { byNote, type Mark } from '../../core/music/mark.ts';
import { markWords } from '../../core/music/markWords.ts';
import type { EngravingDocument } from '../../core/musicxml/engravingDocument.ts';
import { mergedText } from './mergedText.ts';
import type { PrintOrder } from './order.ts';

const STRINGS = ['I', 'II', 'III', 'IV'];

/** MEI of the engraver knows figures, bows, harmonics and slurs; what else is marked stands in words over the note. */
function wordsFor({ value }: Mark): string[] {
  switch (value.kind) {
    case 'finger':
      return value.finger === 'thumb' ? ['thumb'] : [];
    case 'string':
      return [STRINGS[value.string - 1]!];
    case 'reach':
    case 'change':
    case 'retake':
    case 'hooked':
      return [markWords(value)];
    case 'text':
      return [value.text];
    default:
      return [];
  }
}

function withWords(marks: readonly Mark[]): Mark[] {
  const texts = [...byNote(marks, wordsFor)].map(([note, words]) => ({ note, text: words.flat().join(', ') })).filter(({ text }) => text);
  return [...marks.filter(({ value }) => value.kind !== 'text'), ...texts.map(({ note, text }): Mark => ({ note, value: { kind: 'text', text } }))];
}

/** The part with all its marks as MusicXML the engraver turns into MEI. Marks of one seat of several stand like the others. */
export function textForMei(text: string, order: Pick<PrintOrder, 'part' | 'stored' | 'marks'>): EngravingDocument {
  return mergedText(text, order, withWords(order.marks));
}
