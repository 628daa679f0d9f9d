import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { accepted, refused } from '../refusal.ts';
import { STAGES } from '../state.ts';

/** Say how far the part has come; backwards too, when it comes back from the stands. */
export const moveOn = defineOperation({
  name: 'moveOn',
  summary: 'Say how far the part has come, from pulled to on the stands.',
  input: z.strictObject({ stage: z.enum(STAGES) }),
  roles: ['principal', 'librarian'],
  decide: (state, { stage }) => (state.stage === stage ? refused('NOTHING_TO_CHANGE') : accepted([{ type: 'movedOn', stage }])),
});
