import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id, WhyOrNothing } from '../input.ts';
import { accepted } from '../refusal.ts';
import { ownOpenProposal } from '../standing.ts';

/** Take one's own open slip back. It stays readable. */
export const withdraw = defineOperation({
  name: 'withdraw',
  summary: 'Take back an open proposal of your own; it stays readable.',
  input: z.strictObject({ proposal: Id, why: WhyOrNothing }),
  roles: ['principal', 'player'],
  decide(state, { proposal, why }, by) {
    const found = ownOpenProposal(state, proposal, by);
    return found.ok ? accepted([{ type: 'withdrawn', id: proposal, why }]) : found;
  },
});
