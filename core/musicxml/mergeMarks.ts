import { type Mark, slotKey } from '../music/mark.ts';
import type { Part } from '../music/part.ts';
import { isInsideAlone } from '../music/seat.ts';
import { Additions } from './additions.ts';
import { escaped } from './escape.ts';
import type { DocumentFault } from './fault.ts';
import { noteEdits, wordsEdit } from './insertions.ts';
import { type Side, technicalXml } from './markXml.ts';
import { type ReadPart, readScore } from './readScore.ts';
import { SlurMarks } from './slurMarks.ts';
import { pairNumberedSlurs } from './slurs.ts';
import { splice } from './splice.ts';
import { supersededBy } from './supersede.ts';
import { type Standing, VoiceOrder } from './voiceOrder.ts';

export interface MarkedPart {
  /** Id of the part in the document. */
  part: string;
  /** Where the marks' note ids come from, if not from reading this document: the part as it is stored. */
  ids?: Part;
  marks: readonly Mark[];
}

export interface MergeOptions {
  parts: readonly MarkedPart[];
  /** keep: printed marks stay beside the new ones. hide: a printed mark of the same slot stays in the document but is no longer shown. */
  superseded: 'keep' | 'hide';
  /** Whether a character can stand as itself in the document's encoding. */
  expressible: (character: string) => boolean;
}

export type Merged = { ok: true; text: string } | { ok: false; fault: DocumentFault };

/**
 * Writes marks into the very document they are about: elements are inserted (and, with `hide`, printed ones moved aside); every other character stays.
 * Which seats are the caller's business: all marks given are written, those of outside players alone above the staff and those of inside players alone below it;
 * of two marks of one slot on one note and one side the last counts.
 * Refuses a document that cannot be read, an unknown part, an unknown note and a stored part that does not match the document.
 * Invariants: without marks the text is the same; reading again gives the old marks and exactly the new ones.
 * Example: `mergeMarks(text, { parts: [], superseded: 'keep', expressible: () => true })` gives the text back.
 */
export function mergeMarks(text: string, { parts, superseded, expressible }: MergeOptions): Merged {
  const marks = parts.filter((marked) => marked.marks.length);
  if (!marks.length) return { ok: true, text };
  const read = readScore(text, marks.map(({ part }) => part));
  if (!read.ok) return read;
  const additions = new Additions();
  for (const marked of marks) {
    const source = read.parts.find(({ part }) => part.id === marked.part);
    if (!source) return { ok: false, fault: { code: 'NO_SUCH_PART', text: `The score has no part "${marked.part}". Look up its id among the parts of the score.`, part: marked.part } };
    const fault = addPart(source, marked, superseded === 'hide', additions, expressible);
    if (fault) return { ok: false, fault };
  }
  const edits = [...additions.all()].flatMap(([element, addition]) => [...noteEdits(text, element, addition), ...(addition.words.length ? [wordsEdit(text, element, addition.words)] : [])]);
  return { ok: true, text: edits.length ? splice(text, edits) : text };
}

function addPart(source: ReadPart, { ids, marks, part }: MarkedPart, hide: boolean, additions: Additions, expressible: MergeOptions['expressible']): DocumentFault | undefined {
  const order = new VoiceOrder(source.part, source.elements);
  const places = placesOf(ids ?? source.part, source.part, order);
  if (!places) return { code: 'NOT_ITS_SOURCE', text: `The stored part "${part}" does not match its document. Import the document again.`, part };
  const slurs = new SlurMarks(order, pairNumberedSlurs(source.part.measures));
  const slotOn = ({ note, value }: Mark): string => `${note} ${slotKey(value)}`;
  const latest = new Map(marks.map((mark) => [`${slotOn(mark)} ${sideOf(mark)}`, mark]));
  const inSlot = new Map<string, number>();
  for (const mark of latest.values()) inSlot.set(slotOn(mark), (inSlot.get(slotOn(mark)) ?? 0) + 1);
  for (const mark of latest.values()) {
    const { note, value } = mark;
    const side = sideOf(mark);
    const standing = places.get(note);
    if (!standing) return { code: 'UNKNOWN_NOTE', text: `Part "${part}" has no note "${note}". Load the part again.`, part };
    const { element } = standing;
    const addition = additions.at(element);
    if (hide) {
      const { said, elements } = supersededBy(value, element);
      if (said && inSlot.get(slotOn(mark)) === 1) continue;
      for (const printed of elements) addition.hiddenTechnical.add(printed);
    }
    addition.technical.push(...technicalXml(value, side));
    if (value.kind === 'text') additions.at(order.head(standing).element).words.push({ text: escaped(value.text, expressible), placement: side ?? 'above' });
    else if (value.kind === 'slur') slurs[value.slur](standing);
    else if (value.kind === 'none' && value.slot === 'slur' && hide) slurs.rubOut(standing);
  }
  slurs.write(additions, hide);
  return undefined;
}

/** On which side of the staff a mark stands that is for some seats alone: inside players read below. Of no side where it is for everybody. */
function sideOf({ seats = 'all' }: Mark): Side {
  if (seats === 'all') return null;
  return isInsideAlone(seats) ? 'below' : 'above';
}

/** Where each note id stands in the document: same measure, same place in it. Undefined when the two do not have the same shape. */
function placesOf(stored: Part, read: Part, order: VoiceOrder): Map<string, Standing> | undefined {
  if (stored.measures.length !== read.measures.length || stored.measures.some((measure, i) => measure.notes.length !== read.measures[i]?.notes.length)) return undefined;
  const places = new Map<string, Standing>();
  stored.measures.flatMap(({ notes }) => notes).forEach(({ id }, at) => {
    const standing = order.notes[at];
    if (standing) places.set(id, standing);
  });
  return places;
}
