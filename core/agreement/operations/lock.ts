import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { accepted, refused } from '../refusal.ts';

/** Close the part for printing: no proposal, vote or decision until it is opened again. Talk, mutes and the stage go on. */
export const lock = defineOperation({
  name: 'lock',
  summary: 'Lock the part for printing: marks, votes and decisions wait until it is opened again.',
  input: z.strictObject({}),
  roles: ['librarian'],
  decide: (state) => (state.locked ? refused('NOTHING_TO_CHANGE') : accepted([{ type: 'locked' }])),
});
