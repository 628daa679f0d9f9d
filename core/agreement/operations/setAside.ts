import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id, Why } from '../input.ts';
import { accepted } from '../refusal.ts';
import { openProposal } from '../standing.ts';

/** Decide against a slip, with a reason. It stays readable. */
export const setAside = defineOperation({
  name: 'setAside',
  summary: 'Set an open proposal aside, with a reason; it stays readable.',
  input: z.strictObject({ proposal: Id, why: Why }),
  roles: ['principal'],
  decide(state, { proposal, why }) {
    const found = openProposal(state, proposal);
    return found.ok ? accepted([{ type: 'setAside', proposal, why }]) : found;
  },
});
