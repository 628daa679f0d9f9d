import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { accepted, refused } from '../refusal.ts';

/** Open a locked part again. */
export const unlock = defineOperation({
  name: 'unlock',
  summary: 'Open a locked part again for marks, votes and decisions.',
  input: z.strictObject({}),
  roles: ['librarian'],
  decide: (state) => (state.locked ? accepted([{ type: 'unlocked' }]) : refused('NOTHING_TO_CHANGE')),
});
