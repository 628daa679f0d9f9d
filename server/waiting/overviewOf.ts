import { numberOf } from '../../core/music/printedNumber.ts';
import { factsOf } from '../../core/agreement/facts.ts';
import { seatedIn, seatsOf } from '../../core/agreement/seating.ts';
import { changedMeasures, sinceHandedOut } from '../../core/agreement/sinceHandedOut.ts';
import { emptyState } from '../../core/agreement/state.ts';
import type { SectionView, ProgrammeView } from '../../core/agreement/wire/http.ts';
import type { ProgrammeOverview, SinceView } from '../../core/agreement/wire/overview.ts';
import { deadlinesOf } from '../../core/season/deadlines.ts';
import { nextDue, waitedFor } from '../../core/season/late.ts';
import { partNow, type House } from '../operations/partNow.ts';
import type { StoredPart } from '../store/library.ts';

type PartOfWork = ProgrammeView['works'][number]['parts'][number];

async function standing({ store, authority }: House, part: PartOfWork, section: SectionView | null): Promise<Pick<ProgrammeOverview['parts'][number], 'waitedFor' | 'changed'>> {
  // Only votes and late changes stand in the log; how far a part has come stands on the shelf.
  const current = part.stage === 'roundSection' || part.stage === 'onStands' ? await authority.current(part.id) : null;
  const state = current?.state ?? { ...emptyState(), stage: part.stage };
  const out = state.handedOut?.seq;
  // The music is fetched only where something was inked in since.
  const stored = out !== undefined && state.ink.some(({ inked }) => inked.seq > out) ? await store.library.part(part.id) : null;
  const changes = stored ? sinceHandedOut(state, factsOf(stored.content, seatsOf(section))) : [];
  return { waitedFor: waitedFor(state, section), changed: changedMeasures(changes, null).length };
}

/** What is due of every part of a programme and who is waited for. `today`: ISO day. */
export async function overviewOf(house: House, programme: ProgrammeView, today: string): Promise<ProgrammeOverview> {
  const sections = (await house.store.sections.all()).map((section) => seatedIn(section, programme.seatings));
  const deadlines = deadlinesOf(programme.days, programme.deadlines);
  const parts: ProgrammeOverview['parts'] = [];
  for (const part of programme.works.flatMap((work) => work.parts)) {
    const section = sections.find(({ id }) => id === part.section?.id) ?? null;
    parts.push({ id: part.id, due: nextDue(part.stage, deadlines, today), ...(await standing(house, part, section)) });
  }
  return { today, parts };
}

/** What has changed in one part since it was handed out, with places as they are printed. */
export async function sinceOf(house: House, part: StoredPart): Promise<SinceView> {
  const { state, facts } = await partNow(house, part);
  const changes = sinceHandedOut(state, facts);
  return {
    at: state.handedOut?.at ?? null,
    changes: changes.map((change) => {
      const measure = part.content.measures[change.measure - 1]!;
      const notes = measure.notes.filter(({ rest, hidden }) => !rest && !hidden);
      return { ...change, number: numberOf(measure), position: notes.findIndex(({ id }) => id === change.note) + 1 };
    }),
  };
}
