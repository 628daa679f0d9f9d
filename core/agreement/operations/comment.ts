import { z } from 'zod';
import { defineOperation } from '../define.ts';
import { Id, MeasureOrdinal, Mention, Words } from '../input.ts';
import { accepted, refused } from '../refusal.ts';
import type { Mention as Named } from '../state.ts';

/** Those named in what is said, each once; one whose name was rubbed out again is not. */
function named(text: string, mentions: readonly Named[]): { mentions?: Named[] } {
  const kept = mentions.filter(({ person, name }, i) => text.includes(`@${name}`) && mentions.findIndex((other) => other.person === person) === i);
  return kept.length ? { mentions: kept } : {};
}

/** Say something on a measure or on a slip, or answer. An answer hangs where its question hangs, wherever it is said from. */
export const comment = defineOperation({
  name: 'comment',
  summary: 'Say something on a measure or on a proposal, or answer what was said.',
  input: z.strictObject({ id: Id, measure: MeasureOrdinal, proposal: Id.nullable().default(null), answers: Id.nullable().default(null), text: Words, mentions: z.array(Mention).max(40).default([]) }),
  roles: ['principal', 'player', 'librarian'],
  decide(state, { id, measure, proposal, answers, text, mentions }, _by, facts) {
    if (state.comments[id]) return refused('ALREADY_THERE');
    const said = { type: 'commented', id, answers, text, ...named(text, mentions) } as const;
    if (answers !== null) {
      const question = state.comments[answers];
      return question ? accepted([{ ...said, measure: question.measure, proposal: question.proposal }]) : refused('UNKNOWN_COMMENT');
    }
    if (measure > facts.measures) return refused('UNKNOWN_MEASURE', { measure });
    if (proposal !== null) {
      const slip = state.proposals[proposal];
      if (!slip) return refused('UNKNOWN_PROPOSAL');
      if (measure < slip.from || measure > slip.to) return refused('UNKNOWN_MEASURE', { measure });
    }
    return accepted([{ ...said, measure, proposal }]);
  },
});
