import { z } from 'zod';
import { canonical } from '../canonical.ts';
import { CONTENT, checkContent } from '../content.ts';
import { defineOperation } from '../define.ts';
import { Id } from '../input.ts';
import { accepted, refused } from '../refusal.ts';
import { ownOpenProposal } from '../standing.ts';

/** Write one's own open slip anew. Votes were for the slip as it was, so they no longer count. */
export const revise = defineOperation({
  name: 'revise',
  summary: 'Write an open proposal of your own anew; votes for the earlier wording no longer count.',
  input: z.strictObject({ proposal: Id, ...CONTENT }),
  roles: ['principal', 'player'],
  decide(state, { proposal: id, ...content }, by, facts) {
    const found = ownOpenProposal(state, id, by);
    if (!found.ok) return found;
    const checked = checkContent(content, facts);
    if (!checked.ok) return checked;
    const { from, to, seats, why, marks } = found.proposal;
    const before = checkContent({ from, to, seats, why, marks }, facts);
    if (before.ok && canonical(before.content) === canonical(checked.content)) return refused('NOTHING_TO_CHANGE');
    return accepted([{ type: 'revised', id, ...checked.content }]);
  },
});
