import { byNote, type Mark } from '../../core/music/mark.ts';
import { markWords } from '../../core/music/markWords.ts';
import { isInsideAlone } from '../../core/music/seat.ts';
import type { EngravingDocument } from '../../core/musicxml/engravingDocument.ts';
import { mergedText } from './mergedText.ts';
import type { PrintOrder } from './order.ts';

const STRINGS = ['I', 'II', 'III', 'IV'];

/** For inside players alone: such a mark stands below the staff. */
const isInside = ({ seats = 'all' }: Mark): boolean => isInsideAlone(seats);

/** Engravers turn a bow sign below the staff upside down, so an inside player's own bow is said in words. */
const isBowBelow = (mark: Mark): boolean => mark.value.kind === 'bow' && isInside(mark);

/** MEI of the engraver knows figures, bows, harmonics and slurs; what else is marked stands in words over or under the note. */
function wordsFor(mark: Mark): string[] {
  const { value } = mark;
  switch (value.kind) {
    case 'finger':
      return value.finger === 'thumb' ? ['thumb'] : [];
    case 'string':
      return [STRINGS[value.string - 1]!];
    case 'bow':
      return isBowBelow(mark) ? [markWords(value)] : [];
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
  const spoken = [marks.filter((mark) => !isInside(mark)), marks.filter(isInside)].flatMap((ofOneSide) =>
    [...byNote(ofOneSide, (mark) => mark)].flatMap(([note, here]): Mark[] => {
      const words = here.flatMap(wordsFor);
      const { seats } = here[0]!;
      return words.length ? [{ note, value: { kind: 'text', text: words.join(', ') }, ...(isInside(here[0]!) ? { seats } : {}) }] : [];
    }),
  );
  return [...marks.filter((mark) => mark.value.kind !== 'text' && !isBowBelow(mark)), ...spoken];
}

/** The part with all its marks as MusicXML the engraver turns into MEI: what only inside players do stands below the staff. */
export function textForMei(text: string, order: Pick<PrintOrder, 'part' | 'stored' | 'marks'>): EngravingDocument {
  return mergedText(text, order, withWords(order.marks));
}
