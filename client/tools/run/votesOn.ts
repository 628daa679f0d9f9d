import type { Proposal } from '../../../core/agreement/state.ts';

/** How many are for a slip in a measure, and how many against. */
export function votesOn({ votes }: Proposal, measure: number): { plus: number; minus: number } {
  const cast = Object.values(votes[measure] ?? {});
  const plus = cast.filter((vote) => vote === 'for').length;
  return { plus, minus: cast.length - plus };
}
