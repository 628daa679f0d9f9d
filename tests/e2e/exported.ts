import { XmlDocument, type XmlElement } from 'libxml2-wasm';
import type { AgreementState } from '../../core/agreement/state.ts';
import type { MarkValue } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';

/** One sign on one note: "measure ordinal / note / sign", e.g. "2/0 fingering 3". */
export type Sign = string;

/** All technical marks and words of one part of a document, read by XPath alone. */
export function signsOf(xml: string, part: string): Sign[] {
  const document = XmlDocument.fromString(xml);
  try {
    const signs: Sign[] = [];
    document.find(`/score-partwise/part[@id='${part}']/measure`).forEach((measure, m) => {
      let index = -1, waiting: string[] = [];
      for (const child of (measure as XmlElement).find('note|direction') as XmlElement[]) {
        if (child.name === 'direction') {
          waiting.push(...child.find('direction-type/words').map((words) => `words ${words.content}`));
          continue;
        }
        if (child.get('pitch|unpitched') === null) continue;
        index += 1;
        const own = (child.find('notations[not(@print-object="no")]/technical/*') as XmlElement[]).map((sign) => `${sign.name} ${sign.content}`.trim());
        signs.push(...[...waiting, ...own].map((sign) => `${m + 1}/${index} ${sign}`));
        waiting = [];
      }
    });
    return signs;
  } finally {
    document.dispose();
  }
}

function signOf(value: MarkValue): string | null {
  switch (value.kind) {
    case 'finger': return value.finger === 'thumb' ? 'thumb-position' : `fingering ${value.finger}`;
    case 'string': return `string ${value.string}`;
    case 'bow': return `${value.bow}-bow`;
    case 'change': return `other-technical bow change${value.after === 0 ? '' : ` after ${value.after}`}`;
    case 'reach': return `other-technical ${value.reach}`;
    case 'hooked': return 'other-technical hooked';
    case 'retake': return 'other-technical retake';
    case 'text': return `words ${value.text}`;
    default: return null;
  }
}

/** What the section has inked in for one seat, or for everybody (null), straight from the log's state: the marks an export owes. */
export function owedSigns(state: AgreementState, part: Part, seat: string | null): Sign[] {
  const places = new Map(part.measures.flatMap(({ ordinal, notes }) => notes.map((note) => [note.id, `${ordinal}/${note.index}`] as const)));
  return state.ink
    .filter(({ superseded, seats }) => superseded === null && (seats === 'all' || (seat !== null && seats.includes(seat))))
    .flatMap(({ mark }) => {
      const sign = signOf(mark.value);
      return sign === null ? [] : [`${places.get(mark.note)} ${sign}`];
    });
}

/** What `after` has more than `before`, counted. */
export function added(before: Sign[], after: Sign[]): Sign[] {
  const left = [...before];
  return after.filter((sign) => {
    const at = left.indexOf(sign);
    if (at < 0) return true;
    left.splice(at, 1);
    return false;
  });
}
