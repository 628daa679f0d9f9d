import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id } from '../input.ts';
import { accepted, refused } from '../refusal.ts';

/** Let a finding be heard again. */
export const unmute = defineOperation({
  name: 'unmute',
  summary: 'Let a muted finding be shown again.',
  input: z.strictObject({ id: Id }),
  roles: ['principal', 'librarian'],
  decide: (state, { id }) => (state.mutes[id] ? accepted([{ type: 'unmuted', id }]) : refused('UNKNOWN_MUTE')),
});
