import type { AgreementState } from '../../../core/agreement/state.ts';
import type { Desk } from './desk.ts';

/** Measures in which others have said something, not settled, since I was last here. */
export function unreadMeasures({ comments }: AgreementState, me: string, seen: number): number[] {
  const measures = Object.values(comments).filter(({ made, resolved }) => made.by !== me && !resolved && made.seq > seen).map(({ measure }) => measure);
  return [...new Set(measures)].sort((a, b) => a - b);
}

export const unreadHere = ({ state, me, view }: Desk): number[] => unreadMeasures(state, me.id, view.seen);
