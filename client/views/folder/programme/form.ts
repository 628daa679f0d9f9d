import { STAGES, type Stage } from '../../../../core/agreement/state.ts';
import type { ProgrammeView } from '../../../../core/agreement/wire/http.ts';
import type { ChosenDeadlines, ProgrammeBody, ProgrammeDay } from '../../../../core/agreement/wire/programme.ts';
import { deadlinesOf } from '../../../../core/season/deadlines.ts';

/** Stages that may have a day, in order. */
export const DUE_STAGES = STAGES.filter((stage): stage is Exclude<Stage, 'pulled'> => stage !== 'pulled');

/** A day as it is being written; the date may still be open. */
export type DraftDay = ProgrammeDay;

export interface ProgrammeDraft {
  title: string;
  season: string;
  conductor: string;
  days: DraftDay[];
  deadlines: ChosenDeadlines;
}

export const draftOf = ({ title, season, conductor, days, deadlines }: ProgrammeView): ProgrammeDraft => ({ title, season, conductor, days, deadlines });

/** One more day of a kind, on the day after the last of its kind that has a date. */
export function withDay(draft: ProgrammeDraft, kind: ProgrammeDay['kind']): ProgrammeDraft {
  const before = draft.days.filter((day) => day.kind === kind && day.date).at(-1);
  const date = before ? new Date(Date.parse(before.date) + 86_400_000).toISOString().slice(0, 10) : '';
  return { ...draft, days: [...draft.days, { kind, date, time: before?.time ?? null, words: before?.words ?? '' }] };
}

export const withoutDay = (draft: ProgrammeDraft, at: number): ProgrammeDraft => ({ ...draft, days: draft.days.filter((_, i) => i !== at) });

export const changedDay = (draft: ProgrammeDraft, at: number, change: Partial<DraftDay>): ProgrammeDraft => ({ ...draft, days: draft.days.map((day, i) => (i === at ? { ...day, ...change } : day)) });

/** A deadline as chosen: a day, none at all (null), or as it is worked out (undefined). */
export function chosenDeadline(draft: ProgrammeDraft, stage: Exclude<Stage, 'pulled'>, date: string | null | undefined): ProgrammeDraft {
  const { [stage]: _, ...others } = draft.deadlines;
  return { ...draft, deadlines: date === undefined ? others : { ...others, [stage]: date } };
}

/** The day a stage is due by, as the draft stands; empty where there is none. */
export function deadlineShown(draft: ProgrammeDraft, stage: Stage): string {
  return deadlinesOf(draft.days.filter(({ date }) => date), draft.deadlines).find((deadline) => deadline.stage === stage)?.date ?? '';
}

/** What is kept of the draft: days that nobody has dated are left out. */
export const bodyOf = (draft: ProgrammeDraft): ProgrammeBody => ({ ...draft, title: draft.title.trim(), days: draft.days.filter(({ date }) => date) });
