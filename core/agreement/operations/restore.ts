import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Why } from '../input.ts';
import { accepted, refused } from '../refusal.ts';
import { restoring } from '../restoring.ts';

/** Go back to the marks of an earlier place in the log. The log only grows: what stood then is inked in again, what did not is set aside. */
export const restore = defineOperation({
  name: 'restore',
  summary: 'Ink in again what stood after an earlier row of the log, and set aside what did not, with a reason.',
  input: z.strictObject({ seq: z.int().nonnegative(), why: Why }),
  roles: ['principal'],
  decide(state, { seq, why }, _by, facts) {
    if (state.locked) return refused('LOCKED');
    const { back, aside } = restoring(state, seq, facts);
    return back.length + aside.length ? accepted([{ type: 'restored', to: seq, why, back, aside }]) : refused('NOTHING_TO_CHANGE');
  },
});
