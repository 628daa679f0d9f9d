import { randomUUID } from 'node:crypto';
import type { OperationName } from '../../../core/agreement/registry.ts';
import { oneMark } from '../../support/laidOut.ts';
import type { ActorName, TwoEnsembles } from './people.ts';

type Inside = Exclude<ActorName, 'signedOut'>;

/** What a person may be in the part that is asked about. */
const PLAYERS: readonly ActorName[] = ['player', 'deputy', 'inBoth'];
const may = (...roles: ('principal' | 'player' | 'librarian')[]): readonly ActorName[] => roles.flatMap((role) => (role === 'player' ? PLAYERS : [role]));

export interface OperationRow {
  /** Who may, said without looking at the operation itself. */
  who: readonly ActorName[];
  /** Makes ready what it needs and gives its input, such that whoever may is let through. */
  input(at: TwoEnsembles, by: ActorName): Promise<unknown>;
}

async function asked(at: TwoEnsembles, by: Inside, name: OperationName, input: unknown): Promise<void> {
  const answer = await at.house.authority.submit(at.laid.part, { request: { operation: randomUUID(), name, input }, asker: { person: at.idOf(by), session: null } });
  const there = answer && !answer.ok && 'refusal' in answer && answer.refusal.code === 'NOTHING_TO_CHANGE';
  if (!answer?.ok && !there) throw new Error(`${name} could not be made ready: ${JSON.stringify(answer)}`);
}

/** An open slip, of whoever asks where they may have one, else of the principal. */
async function slip(at: TwoEnsembles, by: ActorName): Promise<string> {
  const input = oneMark();
  await asked(at, [...PLAYERS, 'principal'].includes(by) ? (by as Inside) : 'principal', 'propose', input);
  return input.id;
}
async function said(at: TwoEnsembles, by: ActorName): Promise<string> {
  const id = randomUUID();
  await asked(at, [...PLAYERS, 'principal', 'librarian'].includes(by) ? (by as Inside) : 'principal', 'comment', { id, measure: 1, text: 'Lighter here?' });
  return id;
}
async function atRest(at: TwoEnsembles): Promise<string> {
  const id = randomUUID();
  await asked(at, 'librarian', 'mute', { id, rule: `rule/${id}`, place: '*', reason: 'It is meant so.', fingerprint: null });
  return id;
}

/** The part is open for marks. */
export const opened = (at: TwoEnsembles): Promise<void> => asked(at, 'librarian', 'unlock', {});

/** Every operation of the registry; one without a row fails. */
export const OPERATION_ROWS: Record<OperationName, OperationRow> = {
  propose: { who: may('principal', 'player'), input: async () => oneMark() },
  revise: { who: may('principal', 'player'), input: async (at, by) => ({ ...oneMark(), id: undefined, proposal: await slip(at, by), why: 'It speaks better still.' }) },
  withdraw: { who: may('principal', 'player'), input: async (at, by) => ({ proposal: await slip(at, by), why: '' }) },
  setAside: { who: may('principal'), input: async (at, by) => ({ proposal: await slip(at, by), why: 'Not this time.' }) },
  adopt: { who: may('principal'), input: async (at, by) => ({ proposal: await slip(at, by), revision: 1, why: '' }) },
  castVote: { who: may('principal', 'player'), input: async (at, by) => ({ proposal: await slip(at, by), revision: 1, measure: 1, vote: 'for' }) },
  comment: { who: may('principal', 'player', 'librarian'), input: async () => ({ id: randomUUID(), measure: 1, text: 'Lighter here?' }) },
  resolveComment: { who: may('principal', 'player', 'librarian'), input: async (at, by) => ({ id: await said(at, by) }) },
  bringIn: { who: may('principal', 'librarian'), input: async () => oneMark() },
  mute: { who: may('principal', 'librarian'), input: async () => ({ id: randomUUID(), rule: `rule/${randomUUID()}`, place: '*', reason: 'It is meant so.', fingerprint: null }) },
  unmute: { who: may('principal', 'librarian'), input: async (at) => ({ id: await atRest(at) }) },
  moveOn: {
    who: may('principal', 'librarian'),
    async input(at) {
      await asked(at, 'librarian', 'moveOn', { stage: 'roundSection' });
      return { stage: 'inkedIn' };
    },
  },
  restore: {
    who: may('principal'),
    async input(at) {
      const proposal = await slip(at, 'principal');
      await asked(at, 'principal', 'adopt', { proposal, revision: 1, why: '' });
      return { seq: 0, why: 'As it was.' };
    },
  },
  lock: {
    who: may('librarian'),
    input: async () => ({}),
  },
  unlock: {
    who: may('librarian'),
    async input(at) {
      await asked(at, 'librarian', 'lock', {});
      return {};
    },
  },
};
