import { z } from 'zod';
import { CONTENT, checkContent } from '../content.ts';
import { defineOperation } from '../define.ts';
import { Id } from '../input.ts';
import { accepted, refused } from '../refusal.ts';
import { stageAfter } from '../stage.ts';

/** Lay a slip on a range of measures: marks, for whom, and a sentence of why. */
export const propose = defineOperation({
  name: 'propose',
  summary: 'Propose a set of marks over a range of measures, with a sentence of why.',
  input: z.strictObject({ id: Id, ...CONTENT }),
  roles: ['principal', 'player'],
  decide(state, { id, ...content }, by, facts) {
    if (state.locked) return refused('LOCKED');
    if (state.proposals[id]) return refused('ALREADY_THERE');
    const checked = checkContent(content, facts);
    return checked.ok ? accepted([{ type: 'proposed', id, ...checked.content }, ...stageAfter(state, by)]) : checked;
  },
});
