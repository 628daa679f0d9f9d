import { z } from 'zod';
import { CONTENT, checkContent } from '../content.ts';
import { defineOperation } from '../define.ts';
import { Id } from '../input.ts';
import { accepted, refused } from '../refusal.ts';
import { stageAfter } from '../stage.ts';

/** Lay a slip with marks that come from elsewhere: an earlier season, or another section that plays the same. The librarian may do so; deciding stays the principal's. */
export const bringIn = defineOperation({
  name: 'bringIn',
  summary: 'Propose marks that come from an earlier season or from another section, with where they come from.',
  input: z.strictObject({ id: Id, ...CONTENT }),
  roles: ['principal', 'librarian'],
  decide(state, { id, ...content }, by, facts) {
    if (state.locked) return refused('LOCKED');
    if (state.proposals[id]) return refused('ALREADY_THERE');
    const checked = checkContent(content, facts);
    if (!checked.ok) return checked;
    // A part that the librarian lays out is still only pulled.
    const stage = by.roles.includes('principal') ? stageAfter(state, by) : [];
    return accepted([{ type: 'proposed', id, ...checked.content }, ...stage]);
  },
});
