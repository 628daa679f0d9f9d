import { noteIds } from '../music/identity.ts';
import type { Measure, Note, Part, Score } from '../music/part.ts';
import { compareTimes, type ExactTime, plus } from '../music/time.ts';
import { inferredDivisions, type Standing } from './attributes.ts';
import { descend, childrenNamed, child, type XmlElement } from './element.ts';
import { DocumentError, type DocumentFault } from './fault.ts';
import { InForce } from './inForce.ts';
import { instrumentOf } from './instrument.ts';
import { layoutOf, type PartSource } from './layout.ts';
import { nominalLength } from './nominalLength.ts';
import { parseXml } from './parse.ts';
import { type RawMeasure, readMeasure } from './readMeasure.ts';
import { pairSlurs } from './slurs.ts';

/** A part and the elements it was read from. */
export interface ReadPart {
  part: Part;
  source: PartSource;
  /** By measure (ordinal - 1) the `<note>` elements, in the order of `part.measures[i].notes`. */
  elements: XmlElement[][];
}

export type ReadScore = { ok: true; score: Score; parts: ReadPart[]; root: XmlElement } | { ok: false; fault: DocumentFault };

/**
 * Reads a MusicXML document, partwise or timewise.
 * Measures are told apart by their ordinal only; times are exact; tempo and rehearsal marks hold for all parts, dynamics and pizzicato for their own.
 * @param text the document without a byte order mark
 * @param only ids of the parts to read, all where absent; tempo, rehearsal marks and measure lengths then come from these parts alone
 * @returns the score with stable note ids and, part by part, the elements it was read from; or the fault with line, measure and element.
 * Example: `readScore(text)` of a file without parts gives a score with no parts.
 */
export function readScore(text: string, only?: readonly string[]): ReadScore {
  const parsed = parseXml(text);
  if (!parsed.ok) return parsed;
  try {
    return { ok: true, root: parsed.root, ...readParts(parsed.root, text, only) };
  } catch (error) {
    if (error instanceof DocumentError) return { ok: false, fault: error.fault };
    throw error;
  }
}

interface RawPart {
  source: PartSource;
  measures: { raw: RawMeasure | null; standing: Pick<Standing, 'time' | 'fifths'> }[];
  transposition: number;
}

function readParts(root: XmlElement, text: string, only: readonly string[] | undefined): { score: Score; parts: ReadPart[] } {
  const raw = layoutOf(root, text).filter(({ id }) => !only || only.includes(id)).map((source) => readRaw(source, text));
  const count = Math.max(0, ...raw.map(({ measures }) => measures.length));
  const lengths: ExactTime[] = [];
  for (let i = 0; i < count; i++) lengths.push(lengthAt(raw, i));
  const force = new InForce(raw.map(({ measures }) => measures.map((measure) => measure.raw?.said)));
  const parts = raw.map((part, index) => finishPart(part, index, lengths, force));
  const title = [descend(root, 'work', 'work-title'), child(root, 'movement-title')].map((element) => element?.text.trim() ?? '');
  const identification = child(root, 'identification');
  const composer = identification ? childrenNamed(identification, 'creator').find((creator) => (creator.attributes.type ?? 'composer') === 'composer') : undefined;
  return {
    score: { title: [...new Set(title.filter(Boolean))].join(', '), composer: composer?.text.trim().replace(/\s+/g, ' ') ?? '', parts: parts.map(({ part }) => part) },
    parts,
  };
}

function readRaw(source: PartSource, text: string): RawPart {
  const contents = source.measures.flatMap(({ content }) => content ?? []);
  const standing: Standing = { divisions: inferredDivisions(contents), time: null, fifths: null, transpose: new Map() };
  let transposition: number | undefined;
  const measures = source.measures.map(({ number, content }) => {
    const raw = content ? readMeasure(content, standing, { text, part: source.id, measure: number }) : null;
    transposition ??= standing.transpose.values().next().value;
    return { raw, standing: { time: standing.time, fifths: standing.fifths } };
  });
  return { source, measures, transposition: transposition ?? 0 };
}

/** What the longest part fills; where no part has anything, what the time signature asks for. */
function lengthAt(parts: readonly RawPart[], index: number): ExactTime {
  let longest: ExactTime = 0;
  for (const { measures } of parts) {
    const length = measures[index]?.raw?.length ?? 0;
    if (compareTimes(length, longest) > 0) longest = length;
  }
  return longest === 0 ? nominalLength(parts.find(({ measures }) => measures[index]?.standing.time)?.measures[index]?.standing.time ?? null) : longest;
}

function finishPart(raw: RawPart, index: number, lengths: readonly ExactTime[], force: InForce): ReadPart {
  const { source } = raw;
  let start: ExactTime = 0;
  const measures = raw.measures.map(({ raw: content, standing }, i): Measure => {
    const ordinal = i + 1;
    const length = lengths[i] ?? 0;
    const { number, implicit } = source.measures[i] ?? { number: '', implicit: false };
    const rehearsal = force.rehearsal(index, i);
    const said = content?.said;
    const measure: Measure = {
      ordinal,
      number,
      ...(implicit ? { implicit: true } : {}),
      start,
      length,
      time: standing.time,
      fifths: standing.fifths,
      ...(rehearsal === undefined ? {} : { rehearsal }),
      words: said?.words ?? [],
      wedges: said?.wedges ?? [],
      notes: content ? finishNotes(content, source.id, index, i, force) : [],
    };
    start = plus(start, length);
    return measure;
  });
  const part: Part = { id: source.id, name: source.name, instrument: instrumentOf(source.name, source.listed), transposition: raw.transposition, measures, slurs: pairSlurs(measures) };
  return { part, source, elements: raw.measures.map((measure) => measure.raw?.elements ?? []) };
}

function finishNotes(content: RawMeasure, partId: string, partIndex: number, measureIndex: number, force: InForce): Note[] {
  const ids = noteIds(partId, measureIndex + 1, content.notes);
  const at = force.measure(partIndex, measureIndex);
  let index = 0;
  return content.notes.map((note, i): Note => {
    const now = at(note);
    return {
      id: ids[i] ?? '',
      ...note,
      index: note.rest ? -1 : index++,
      dynamic: now.dynamic,
      tempo: now.tempo,
      ...(now.pizzicato ? { pizzicato: true } : {}),
    };
  });
}
