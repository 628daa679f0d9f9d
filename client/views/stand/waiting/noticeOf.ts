import { waitsFor, type Waiting } from '../../../../core/agreement/waiting/waitsFor.ts';
import type { AgreementState } from '../../../../core/agreement/state.ts';
import type { Role } from '../../../../core/agreement/people.ts';
import { words } from '../../../words/words.ts';

/** Measures in which somebody laid a slip or said something. */
function wroteIn({ proposals, comments }: AgreementState, person: string, measure: number): boolean {
  return Object.values(proposals).some(({ proposed, from, to }) => proposed.by === person && from <= measure && measure <= to) || Object.values(comments).some(({ made, measure: at }) => made.by === person && at === measure);
}

function sentenceOf(one: Waiting, state: AgreementState, person: string, name: (ordinal: number) => string): string | null {
  const { notices } = words;
  if (one.kind === 'named') return notices.named(one.who, words.inMeasures(name(one.measure), name(one.measure)));
  const slip = `${name(one.from)}${one.letter}`;
  if (one.kind === 'vote') return wroteIn(state, person, one.measure) ? notices.laid(slip, one.who) : null;
  return one.kind === 'decided' && one.mine && one.status !== 'withdrawn' ? notices[one.status](slip, one.who) : null;
}

/** The newest thing after row `told` that concerns a person, as one sentence; null where nothing does. */
export function noticeOf(state: AgreementState, me: { id: string; roles: readonly Role[] }, told: number, name: (ordinal: number) => string): string | null {
  const fresh = waitsFor(state, me, told).filter(({ seq }) => seq > told);
  const sentences = fresh.sort((a, b) => b.seq - a.seq).map((one) => sentenceOf(one, state, me.id, name));
  return sentences.find((sentence) => sentence !== null) ?? null;
}
