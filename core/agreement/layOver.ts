import { change, type Draft } from './draft.ts';
import { letterOf } from './letter.ts';
import type { Proposal } from './state.ts';

/** The ordinal a measure has after a corrected edition was laid over; beyond the old edition it stays. Example: `measureNow([1, 3], 2)` is 3. */
export const measureNow = (measures: readonly number[], measure: number): number => measures[measure - 1] ?? measure;

function votesNow(votes: Proposal['votes'], measures: readonly number[]): Proposal['votes'] {
  const now: Proposal['votes'] = {};
  for (const [measure, cast] of Object.entries(votes)) {
    const there = measureNow(measures, Number(measure));
    now[there] = { ...now[there], ...cast };
  }
  return now;
}

/**
 * Moves all that stands on measures to where those measures are now, in place; marks stand on notes and need no moving. Where two measures became one, slips
 * that would share a letter get a new one. Example: with a measure put in before measure 2, what was said of measure 2 is said of measure 3.
 */
export function layOver(draft: Draft, measures: readonly number[]): void {
  const letters: Record<string, number> = {};
  for (const [measure, given] of Object.entries(draft.state.letters)) {
    const there = measureNow(measures, Number(measure));
    letters[there] = Math.max(letters[there] ?? 0, given);
  }
  const taken = new Set<string>();
  const proposals = change(draft, 'proposals');
  for (const proposal of Object.values(proposals)) {
    const [from, to] = [measureNow(measures, proposal.from), measureNow(measures, proposal.to)];
    let { letter } = proposal;
    if (taken.has(`${from} ${letter}`)) {
      letter = letterOf(letters[from] ?? 0);
      letters[from] = (letters[from] ?? 0) + 1;
    }
    taken.add(`${from} ${letter}`);
    proposals[proposal.id] = { ...proposal, from, to, letter, votes: votesNow(proposal.votes, measures) };
  }
  change(draft, 'letters');
  draft.state.letters = letters;
  const comments = change(draft, 'comments');
  for (const comment of Object.values(comments)) comments[comment.id] = { ...comment, measure: measureNow(measures, comment.measure) };
  const ink = change(draft, 'ink');
  ink.forEach((one, i) => (ink[i] = { ...one, measure: measureNow(measures, one.measure) }));
}
