import type { Finding } from '../../../core/check/finding.ts';
import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
import { playedAnywhere } from '../../../core/matching/anywhere.ts';
import type { Run } from '../../../core/matching/run.ts';
import { playedTogether } from '../../../core/matching/together.ts';
import type { Mark } from '../../../core/music/mark.ts';
import type { Note } from '../../../core/music/part.ts';
import { slurredNotes } from '../../../core/music/slurredNotes.ts';
import type { Chance } from '../../support/chance.ts';
import { isTremolo } from '../../../core/bowing/strokes.ts';
import type { StringPart } from '../../../core/music/part.ts';
import { SEATS } from './marked.ts';
import type { Trial } from './faults.ts';

type Judge = (trial: Trial, before: readonly Finding[], after: readonly Finding[]) => void;

interface Notes {
  byId: ReadonlyMap<string, Note>;
  measureOf: ReadonlyMap<string, number>;
  inSlur: ReadonlySet<string>;
}

function notesOf(part: StringPart): Notes {
  const notes = part.measures.flatMap((measure) => measure.notes);
  return {
    byId: new Map(notes.map((note) => [note.id, note])),
    measureOf: new Map(part.measures.flatMap(({ ordinal, notes: inIt }) => inIt.map(({ id }) => [id, ordinal] as const))),
    inSlur: slurredNotes(part),
  };
}

const isFree = ({ byId, inSlur }: Notes, id: string): boolean => {
  const note = byId.get(id)!;
  return !inSlur.has(id) && !note.pizzicato && !isTremolo(note) && !note.ties.includes('stop') && !note.technical.length;
};

/** Pairs of notes of one run, some way into it. */
const pairs = ({ notes }: Run): readonly (readonly [string, string])[] => notes.slice(1, -1);

/** Faults that stand between two sections, or between two places of one part: both marked alike first, then one of them otherwise. */
export function plantAcross(parts: readonly StringPart[], chance: Chance, judge: Judge): void {
  for (const own of parts) {
    const ours = notesOf(own);
    const check = standingCheck({ part: own, seats: SEATS, settings: {} });
    const twice = (name: string, says: string, one: (bow: 'up' | 'down' | null, note: string) => Mark | null, pair: readonly [string, string], also: readonly string[] = []): void => {
      const [model, again] = pair;
      const alike = [one('down', model), one('down', again)].filter((mark) => mark !== null);
      const otherwise = [one('down', model), one('up', again)].filter((mark) => mark !== null);
      judge({ name, says: [says], also, measure: ours.measureOf.get(again)! }, check.findings(alike), check.findings(otherwise));
    };
    const again = playedAnywhere(own, own, { unison: 16, rhythm: 1e9 }).filter((run) => run.a.line === run.b.line && ours.byId.get(run.notes[0]![0])!.onset === ours.byId.get(run.notes[0]![1])!.onset);
    if (again.length) {
      const run = chance.pick(again);
      const free = pairs(run).filter(([a, b]) => a !== b && isFree(ours, a) && isFree(ours, b) && ours.byId.get(a)!.onset === ours.byId.get(b)!.onset);
      if (free.length) {
        twice('the same music bowed the other way', 'bow/same-music', (bow, note) => ({ note, value: { kind: 'bow', bow: bow! } }), chance.pick(free), ['bow/same-direction']);
      }
      // An octave apart the hand differs: only the very same pitches are the same music for it.
      const isExact = run.notes.every(([a, b]) => ours.byId.get(a)!.midi === ours.byId.get(b)!.midi);
      const fingered = run.notes.slice(4, -4).filter(([a, b]) => a !== b && isExact && ours.byId.get(a)!.midi !== undefined && !ours.byId.get(a)!.grace);
      if (fingered.length > 0) {
        twice('the same music fingered otherwise', 'fingering/same-music', (bow, note) => ({ note, value: { kind: 'finger', finger: bow === 'down' ? 2 : 3 } }), chance.pick(fingered));
      }
    }
    const other = parts.find((part) => part !== own && playedTogether(own, part, { unison: 8, rhythm: 1e9 }).length > 0);
    if (!other) continue;
    const theirs = notesOf(other);
    const runs = playedTogether(own, other, { unison: 8, rhythm: 1e9 });
    const run = chance.pick(runs);
    const free = pairs(run).filter(([a, b]) => isFree(ours, a) && isFree(theirs, b));
    const beside = (marks: Mark[]) => [{ section: other.name, part: other, marks, seats: SEATS }];
    if (free.length) {
      const [a, b] = chance.pick(free);
      const there = beside([{ note: b, value: { kind: 'bow', bow: 'down' } }]);
      const sign = (bow: 'up' | 'down'): Mark[] => [{ note: a, value: { kind: 'bow', bow } }];
      judge({ name: 'a section in unison bowed the other way', says: ['section/unison-bowed-against'], also: ['bow/same-direction'], measure: ours.measureOf.get(a)! }, check.findings(sign('down'), there), check.findings(sign('up'), there));
    }
    const slurred = pairs(run).filter(([a, b]) => ours.inSlur.has(a) && theirs.inSlur.has(b) && [ours.byId.get(a)!, theirs.byId.get(b)!].every((note) => !note.pizzicato && !isTremolo(note) && !note.ties.includes('stop') && !note.grace));
    if (slurred.length) {
      const [a, b] = chance.pick(slurred);
      const split = (note: string): Mark => ({ note, value: { kind: 'slur', slur: 'split' } });
      judge({ name: 'a slur split in one of two sections', says: ['section/unison-slurred-otherwise'], also: ['bow/same-direction', 'section/unison-bowed-against'], measure: ours.measureOf.get(a)! }, check.findings([split(a)], beside([split(b)])), check.findings([split(a)], beside([])));
    }
  }
}
