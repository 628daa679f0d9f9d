import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id, MeasureOrdinal, Words } from '../input.ts';
import { accepted, refused } from '../refusal.ts';

/** Say something on a measure or on a slip, or answer. An answer hangs where its question hangs, wherever it is said from. */
export const comment = defineOperation({
  name: 'comment',
  summary: 'Say something on a measure or on a proposal, or answer what was said.',
  input: z.strictObject({ id: Id, measure: MeasureOrdinal, proposal: Id.nullable().default(null), answers: Id.nullable().default(null), text: Words }),
  roles: ['principal', 'player', 'librarian'],
  decide(state, { id, measure, proposal, answers, text }, _by, facts) {
    if (state.comments[id]) return refused('ALREADY_THERE');
    if (answers !== null) {
      const question = state.comments[answers];
      return question ? accepted([{ type: 'commented', id, measure: question.measure, proposal: question.proposal, answers, text }]) : refused('UNKNOWN_COMMENT');
    }
    if (measure > facts.measures) return refused('UNKNOWN_MEASURE', { measure });
    if (proposal !== null) {
      const slip = state.proposals[proposal];
      if (!slip) return refused('UNKNOWN_PROPOSAL');
      if (measure < slip.from || measure > slip.to) return refused('UNKNOWN_MEASURE', { measure });
    }
    return accepted([{ type: 'commented', id, measure, proposal, answers, text }]);
  },
});
