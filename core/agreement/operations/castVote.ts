import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id, MeasureOrdinal } from '../input.ts';
import { accepted, refused } from '../refusal.ts';
import { stageAfter } from '../stage.ts';
import { openProposal } from '../standing.ts';

/** Say for or against a slip in one of its measures. Names the revision that was read, so that nobody votes for marks they have not seen. */
export const castVote = defineOperation({
  name: 'castVote',
  summary: 'Vote for or against a proposal in one of its measures, or take the vote back with null.',
  input: z.strictObject({ proposal: Id, revision: z.int().positive(), measure: MeasureOrdinal, vote: z.enum(['for', 'against']).nullable() }),
  roles: ['principal', 'player'],
  decide(state, { proposal: id, revision, measure, vote }, by) {
    const found = openProposal(state, id);
    if (!found.ok) return found;
    const { proposal } = found;
    if (proposal.revision !== revision) return refused('REVISED');
    if (measure < proposal.from || measure > proposal.to) return refused('UNKNOWN_MEASURE', { measure });
    if ((proposal.votes[measure]?.[by.id] ?? null) === vote) return refused('NOTHING_TO_CHANGE');
    return accepted([{ type: 'voteCast', proposal: id, measure, vote }, ...stageAfter(state, by)]);
  },
});
