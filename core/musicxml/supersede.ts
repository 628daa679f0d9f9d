import { type MarkValue, slotKey, slotOf } from '../music/mark.ts';
import { childrenNamed, isHidden, type XmlElement } from './element.ts';
import { technicalMark } from './notations.ts';
import { readMarks } from './readMarks.ts';

/**
 * The printed elements of a note that a new mark supersedes, and whether the note says the new mark already (then nothing has to be written, unless others at
 * the desk have another).
 * Only marks that are shown count.
 */
export function supersededBy(value: MarkValue, note: XmlElement): { said: boolean; elements: XmlElement[] } {
  const elements = childrenNamed(note, 'notations')
    .filter((notations) => !isHidden(notations))
    .flatMap((notations) => childrenNamed(notations, 'technical'))
    .flatMap(({ children }) => children);
  const marks = readMarks(elements.map((element) => technicalMark(element, false))).filter((mark) => (value.kind === 'none' ? slotOf(mark.value) === value.slot : slotKey(mark.value) === slotKey(value)));
  const said = marks.length === 1 && JSON.stringify(marks[0]?.value) === JSON.stringify(value);
  const indices = new Set(marks.flatMap(({ from }) => from));
  return { said, elements: elements.filter((_, index) => indices.has(index)) };
}
