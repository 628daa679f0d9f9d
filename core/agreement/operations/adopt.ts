import { z } from 'zod';
import { checkContent } from '../content.ts';
import { defineOperation } from '../define.ts';
import { Id, WhyOrNothing } from '../input.ts';
import { accepted, refused } from '../refusal.ts';
import { openProposal } from '../standing.ts';

/**
 * Ink a slip in: its marks stand from now on and supersede what stood in their slots. The content is checked again, because the
 * part or the seating may have changed since it was proposed.
 */
export const adopt = defineOperation({
  name: 'adopt',
  summary: 'Ink an open proposal in, as it was in the revision you read.',
  input: z.strictObject({ proposal: Id, revision: z.int().positive(), why: WhyOrNothing }),
  roles: ['principal'],
  decide(state, { proposal: id, revision, why }, _by, facts) {
    const found = openProposal(state, id);
    if (!found.ok) return found;
    const { proposal } = found;
    if (proposal.revision !== revision) return refused('REVISED');
    const { from, to, seats, marks } = proposal;
    const checked = checkContent({ from, to, seats, why: proposal.why, marks }, facts);
    if (!checked.ok) return checked;
    return accepted([{ type: 'adopted', proposal: id, why, measures: marks.map(({ note }) => facts.notes.get(note)!) }]);
  },
});
