import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id } from '../input.ts';
import { accepted, refused } from '../refusal.ts';

/** Say that a comment is settled: whoever made it, or the principal. */
export const resolveComment = defineOperation({
  name: 'resolveComment',
  summary: 'Say that a comment is settled: its author or the principal.',
  input: z.strictObject({ id: Id }),
  roles: ['principal', 'player', 'librarian'],
  decide(state, { id }, by) {
    const comment = state.comments[id];
    if (!comment) return refused('UNKNOWN_COMMENT');
    if (comment.resolved) return refused('ALREADY_RESOLVED');
    if (comment.made.by !== by.id && !by.roles.includes('principal')) return refused('NOT_YOUR_COMMENT', { owner: `${comment.made.name} or the principal` });
    return accepted([{ type: 'commentResolved', id }]);
  },
});
