import { partBowings } from '../../../core/bowing/direction/partBowings.ts';
import { staggerPlan } from '../../../core/bowing/stagger/plan.ts';
import type { Finding } from '../../../core/check/finding.ts';
import { sectionProblem } from '../../../core/check/sectionPlan.ts';
import { seatMarks } from '../../../core/check/seatMarks.ts';
import { CheckSettings } from '../../../core/check/settings.ts';
import { fingerLine } from '../../../core/fingering/fingerLine.ts';
import { lineOfPart } from '../../../core/fingering/partLine.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { excludes, type Mark } from '../../../core/music/mark.ts';
import type { StringPart } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { tempoMap } from '../../../core/music/seconds.ts';
import { corpusEditions, stringParts } from '../../support/corpus.ts';

const QUICK = { rounds: 1, tries: 200, pivots: 2000, near: 0 };
const PLANS_A_PART = 6;
export const SEATS = seatsFor(12);

/** Files of the corpus with string parts, and those parts. */
export async function* scores(): AsyncGenerator<{ file: string; parts: StringPart[] }> {
  for (const file of corpusEditions()) {
    const parts = await stringParts(file);
    if (parts.length) yield { file, parts };
  }
}

/** The engine's own fingering: a finger and a string on every single note it fingers. */
function fingers(part: StringPart): Mark[] {
  const { line, tempo } = lineOfPart(part, 1, part.measures.length);
  const best = fingerLine(instrumentNamed(part.instrument), line, tempo ?? 90, { best: 1, players: SEATS.length }).fingerings[0];
  return (best?.notes ?? []).flatMap(({ id, finger, string }): Mark[] => [{ note: id, value: { kind: 'finger', finger } }, { note: id, value: { kind: 'string', string } }]);
}

/** The engine's own bowing: the signs it proposes, and the direction of every bow besides. */
export function bows(part: StringPart): { marks: Mark[]; strokes: { notes: string[]; begins: number; ends: number; direction: 'up' | 'down'; measure: number }[][] } {
  const settings = CheckSettings.parse({});
  const bowings = partBowings({
    part,
    instrument: instrumentNamed(part.instrument),
    tempo: tempoMap(part, settings.assumedTempo),
    signsOn: seatMarks(part, [], []).forAll,
    table: settings.bowSeconds,
    assumedDynamic: settings.assumedDynamic,
    measures: { from: 1, to: part.measures.length },
    best: 1,
  });
  const marks = bowings.flatMap((bowing) => bowing.marks);
  const graces = new Set(part.measures.flatMap(({ notes }) => notes.flatMap(({ id, grace }) => (grace ? [id] : []))));
  const firstOf = (notes: readonly string[]): string => notes.find((id) => !graces.has(id)) ?? notes[0]!;
  const signed = new Set(marks.filter(({ value }) => value.kind === 'bow').map(({ note }) => note));
  const more = bowings.flatMap(({ strokes }) => strokes.filter(({ notes, split }) => !split && !signed.has(firstOf(notes))).map(({ notes, direction }): Mark => ({ note: firstOf(notes), value: { kind: 'bow', bow: direction } })));
  return { marks: [...marks, ...more], strokes: bowings.map(({ strokes }) => strokes) };
}

/** A plan for staggered changes of bow: its marks, and the note its passage begins with. */
export interface Passage {
  first: string;
  marks: Mark[];
}

/** Plans for passages longer than a bow. Where the rules of the section cannot all hold, none. */
function plans(part: StringPart, marks: readonly Mark[], tooLong: readonly Finding[]): Passage[] {
  const passages: Passage[] = [];
  for (const { notes } of tooLong.slice(0, PLANS_A_PART)) {
    const found = sectionProblem({ part, seats: SEATS, marks: [...marks, ...passages.flatMap((passage) => passage.marks)], settings: {}, absent: [], first: notes[0]!, last: notes.at(-1)! });
    if (!('planned' in found)) continue;
    const { problem, settings, marksFor } = found.planned;
    const plan = staggerPlan(problem, settings, QUICK);
    if (plan.feasible) passages.push({ first: notes[0]!, marks: marksFor(plan.players.map(({ changes }) => changes)) });
  }
  return passages;
}

/** A part as the engine alone would mark it. `find` is the checker. */
export function marked(part: StringPart, find: (marks: readonly Mark[]) => Finding[]): { marks: Mark[]; passages: Passage[] } {
  const all = [...fingers(part), ...bows(part).marks];
  const onNote = new Map<string, Mark[]>();
  const marks = all.filter((mark) => {
    const before = onNote.get(mark.note) ?? onNote.set(mark.note, []).get(mark.note)!;
    if (before.some((other) => excludes(other.value, mark.value))) return false;
    before.push(mark);
    return true;
  });
  const passages = plans(part, marks, find(marks).filter(({ rule }) => rule === 'bow/outlasts-bow'));
  return { marks: [...marks, ...passages.flatMap((passage) => passage.marks)], passages };
}
