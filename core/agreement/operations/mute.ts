import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id, Why } from '../input.ts';
import { accepted, refused } from '../refusal.ts';

/** Put a finding to rest, at one place as the music stands there now, or a whole rule (place "*", no fingerprint). */
export const mute = defineOperation({
  name: 'mute',
  summary: 'Put a finding of the checker to rest with a reason, at one place or for a whole rule.',
  input: z
    .strictObject({ id: Id, rule: z.string().min(1).max(80), place: z.string().min(1).max(300), reason: Why, fingerprint: z.string().min(1).max(200).nullable() })
    .refine(({ place, fingerprint }) => (place === '*') === (fingerprint === null), { path: ['fingerprint'], message: 'stands with a place and not with a whole rule' }),
  roles: ['principal', 'librarian'],
  decide(state, { id, rule, place, reason, fingerprint }) {
    if (state.mutes[id]) return refused('ALREADY_THERE');
    if (Object.values(state.mutes).some((mute) => mute.rule === rule && mute.place === place && mute.fingerprint === fingerprint)) return refused('NOTHING_TO_CHANGE');
    return accepted([{ type: 'muted', id, rule, place, reason, fingerprint }]);
  },
});
