import { byNote, type Mark } from '../../music/mark.ts';
import type { StringPart } from '../../music/part.ts';
import type { SeatId } from '../../music/seat.ts';
import { type Stretch, stretchesOf } from '../../music/stretches.ts';
import { type CheckContext, markedMusic, partMusic, type PartMusic, type SectionContext } from '../context.ts';
import type { Finding, OtherSection } from '../finding.ts';
import { RULES } from '../registry.ts';
import { type Index, named, type Reported, worded } from '../reported.ts';
import type { Kin } from '../rule.ts';
import { CheckSettings } from '../settings.ts';
import { changedNotes } from './changedNotes.ts';
import { sectionBows } from './sectionBows.ts';
import { musicOf, widened } from './stretch.ts';

export interface StandingInput {
  part: StringPart;
  seats: readonly SeatId[];
  /** As stored with the section; throws on a wrong form. */
  settings: Record<string, unknown>;
}

export interface StandingCheck {
  /** What the rules find with these marks in force, in the order of `checkPart`. */
  findings(marks: readonly Mark[], others?: readonly OtherSection[]): Finding[];
}

const NEAR = RULES.filter(({ check }) => check);
const COMPARING = RULES.filter(({ kin }) => kin);
const ACROSS = RULES.filter(({ across }) => across);

const ordinalsIn = ({ from, to }: Stretch): number[] => Array.from({ length: to - from + 1 }, (_, i) => from + i);

/** Only the measures of these stretches, one after the other. */
function together(music: PartMusic, stretches: readonly Stretch[]): PartMusic {
  const pieces = stretches.map((stretch) => musicOf(music, stretch));
  return { ...music, measures: pieces.flatMap(({ measures }) => measures), voices: music.voices.map((_, v) => pieces.flatMap(({ voices }) => voices[v]!)) };
}

/**
 * A check that is kept while marks change: the first call reads the whole part, each later one only what the changed marks can matter to.
 * Invariant: `findings(marks)` equals `checkPart` with the same marks, whatever was asked before.
 * Example: one finger set in a part of a thousand measures reads a few dozen of them again.
 */
export function standingCheck({ part, seats, settings: given }: StandingInput): StandingCheck {
  const settings = CheckSettings.parse(given);
  const music = partMusic(part, settings);
  const measureOf = new Map(part.measures.flatMap(({ ordinal, notes }) => notes.map(({ id }) => [id, ordinal] as const)));
  const notes = new Map(part.measures.flatMap((measure) => measure.notes.map((note) => [note.id, note] as const)));
  const kin = COMPARING.flatMap((rule) => rule.kin!(music).map((one) => ({ rule, kin: one, stretches: stretchesOf(one.measures), within: new Set(one.measures) })));
  const bows = sectionBows(music, seats);
  let known: { onNote: ReadonlyMap<string, readonly Mark[]>; near: Reported[]; compared: Reported[][] } | null = null;

  const marksIn = (within: PartMusic, onNote: ReadonlyMap<string, Mark[]>): Mark[] => within.measures.flatMap((measure) => measure.notes.flatMap(({ id }) => onNote.get(id) ?? []));
  const near = (context: CheckContext, index: Index): Reported[] => {
    const found: Reported[] = [];
    for (const rule of NEAR) rule.check!(context, (report) => found.push(worded(rule, report, index)));
    return found;
  };
  const compare = ({ rule, kin: pair, stretches }: { rule: (typeof RULES)[number]; kin: Kin; stretches: Stretch[] }, index: Index, onNote: ReadonlyMap<string, Mark[]>): Reported[] => {
    const here = together(music, stretches);
    const found: Reported[] = [];
    rule.compare!(markedMusic(here, seats, marksIn(here, onNote)), pair, (report) => found.push(worded(rule, report, index)));
    return found;
  };

  return {
    findings(marks, others = []) {
      const onNote = byNote(marks, (mark) => mark);
      const index: Index = { notes, measures: part.measures, marks: onNote, seats };
      const changed = changedNotes(known?.onNote ?? new Map(), onNote);
      const section: SectionContext = { ...music, common: bows.common(onNote, changed), printed: bows.printed, others };
      const whole: Reported[] = [];
      for (const rule of ACROSS) rule.across!(section, (report) => whole.push(worded(rule, report, index)));
      const answer = (now: NonNullable<typeof known>): Finding[] => {
        known = now;
        return named([...now.near, ...now.compared.flat(), ...whole], settings, part.measures.length);
      };
      if (!known) return answer({ onNote, near: near(markedMusic(music, seats, marks), index), compared: kin.map((one) => compare(one, index, onNote)) });
      const ordinals = changed.flatMap((note) => measureOf.get(note) ?? []);
      // Bows may have been joined before that no longer are: widen by both.
      const joined = [known.onNote, onNote];
      let kept = known.near;
      const fresh: Reported[] = [];
      for (const stretch of stretchesOf(stretchesOf(ordinals).flatMap((here) => ordinalsIn(widened(here, music, joined))))) {
        const inside = ({ finding: { measure } }: Reported): boolean => measure >= stretch.from && measure <= stretch.to;
        const here = musicOf(music, widened(stretch, music, joined));
        kept = kept.filter((one) => !inside(one));
        fresh.push(...near(markedMusic(here, seats, marksIn(here, onNote)), index).filter(inside));
      }
      const compared = kin.map((one, i) => (ordinals.some((ordinal) => one.within.has(ordinal)) ? compare(one, index, onNote) : known!.compared[i]!));
      return answer({ onNote, near: [...kept, ...fresh], compared });
    },
  };
}
