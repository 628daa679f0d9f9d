import type { Finger, MarkValue } from '../music/mark.ts';
import type { TechnicalMark } from '../music/part.ts';

/** A mark that stands in the document and which of the technical elements say it. */
export interface WrittenMark {
  value: MarkValue;
  /** Indices into the list it was read from. */
  from: number[];
}

/**
 * The marks that the shown technical elements of a note say, in document order. Reads back exactly what `technicalXml` writes, and from printed
 * editions also several fingers in one element ("2\n1"), "4-3" and `open-string`. Elements that say none of our marks are passed over.
 * Example: `[{ name: 'fingering', value: '2' }]` gives finger 2.
 */
export function readMarks(technical: readonly TechnicalMark[]): WrittenMark[] {
  const marks: WrittenMark[] = [];
  technical.forEach((mark, index) => {
    if (mark.hidden) return;
    const last = marks.at(-1);
    if (mark.name === 'fingering' && mark.detail?.substitution === 'yes' && last?.value.kind === 'finger' && last.value.substitution === undefined) {
      const finger = fingerOf(mark.value ?? '');
      if (finger === undefined) return;
      last.value = { ...last.value, substitution: finger };
      last.from.push(index);
      return;
    }
    for (const value of valuesOf(mark)) marks.push({ value, from: [index] });
  });
  return marks;
}

function valuesOf(mark: TechnicalMark): MarkValue[] {
  const text = mark.value?.trim() ?? '';
  switch (mark.name) {
    case 'fingering':
      return text.split(/[\s,]+/).flatMap(fingers);
    case 'open-string':
      return [{ kind: 'finger', finger: 0 }];
    case 'thumb-position':
      return [{ kind: 'finger', finger: 'thumb' }];
    case 'string':
      return /^[1-4]$/.test(text) ? [{ kind: 'string', string: Number(text) }] : [];
    case 'harmonic':
      return [{ kind: 'harmonic', harmonic: mark.detail?.artificial === undefined ? 'natural' : 'artificial' }];
    case 'up-bow':
      return [{ kind: 'bow', bow: 'up' }];
    case 'down-bow':
      return [{ kind: 'bow', bow: 'down' }];
    case 'other-technical':
      return spoken(text);
    default:
      return [];
  }
}

function fingers(text: string): MarkValue[] {
  const [first, second] = text.split('-').map(fingerOf);
  if (first === undefined) return [];
  return [{ kind: 'finger', finger: first, ...(second === undefined ? {} : { substitution: second }) }];
}

function fingerOf(text: string): Finger | undefined {
  const trimmed = text.trim();
  if (/^[0-4]$/.test(trimmed)) return Number(trimmed) as Finger;
  return /^(t|th|thumb|ϙ|♀)$/i.test(trimmed) ? 'thumb' : undefined;
}

function spoken(text: string): MarkValue[] {
  const change = /^bow change(?: after (\d{1,6}(?:\/[1-9]\d{0,5})?))?$/.exec(text);
  if (change) return [{ kind: 'change', after: change[1]?.includes('/') ? change[1] : Number(change[1] ?? 0) }];
  if (text === 'extension' || text === 'contraction') return [{ kind: 'reach', reach: text }];
  if (text === 'retake' || text === 'hooked') return [{ kind: text }];
  if (text === 'slur split' || text === 'slur join') return [{ kind: 'slur', slur: text === 'slur split' ? 'split' : 'join' }];
  return [];
}
