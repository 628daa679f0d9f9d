import type { AgreementEvent, LogEntry } from '../../../../core/agreement/event.ts';
import { replay } from '../../../../core/agreement/replay.ts';
import type { Happened, Of } from '../record/happened.ts';
import { print, short } from '../record/record.ts';
import { slipsOf } from './ownReplay.ts';

const ENSEMBLES = ['north', 'south'];
const PEOPLE = ENSEMBLES.flatMap((ensemble) => ['lead', 'player'].map((role) => ({ id: `${role} of ${ensemble}`, ensemble })));
const PARTS = ENSEMBLES.map((ensemble) => ({ id: `part of ${ensemble}`, ensemble }));

/** What is said on one part, in order: who and what. The fourth and fifth votes are of the same measure, so the second counts. */
function story(part: string): { by: 'lead' | 'player'; name: string; events: AgreementEvent[] }[] {
  const proposed = (id: string): AgreementEvent => ({ type: 'proposed', id: `${id} ${part}`, from: 1, to: 2, seats: 'all', why: 'It lies better.', marks: [] });
  const voted = (id: string, measure: number, vote: 'for' | 'against'): AgreementEvent => ({ type: 'voteCast', proposal: `${id} ${part}`, measure, vote });
  return [
    { by: 'player', name: 'propose', events: [proposed('A')] },
    { by: 'lead', name: 'castVote', events: [voted('A', 1, 'against')] },
    { by: 'player', name: 'propose', events: [proposed('B')] },
    { by: 'player', name: 'castVote', events: [voted('B', 2, 'for')] },
    { by: 'lead', name: 'castVote', events: [voted('B', 2, 'against')] },
    { by: 'lead', name: 'adopt', events: [{ type: 'adopted', proposal: `A ${part}`, why: '', measures: [] }] },
    { by: 'player', name: 'comment', events: [{ type: 'commented', id: `C ${part}`, measure: 1, proposal: null, answers: null, text: 'Slower?' }] },
    { by: 'player', name: 'withdraw', events: [{ type: 'withdrawn', id: `B ${part}`, why: '' }] },
  ];
}

/** Operation ids: their beginnings differ, as those of real ones do. */
export const idOf = (part: string, n: number): string => `${PARTS.findIndex(({ id }) => id === part)}${String(n).padStart(7, '0')}-${part}`;

/** A short history in which everything that was promised holds; a checker that finds something in it is wrong. */
export function soundHistory(): Happened[] {
  return [
    { k: 'cast', seed: 0, servers: 3, redis: true, workers: 2, people: PEOPLE, parts: PARTS },
    ...PARTS.flatMap(partHistory),
    { k: 'fault', t: 3, kind: 'server killed', at: 'server 1' },
    { k: 'pried', t: 4, person: 'lead of north', part: 'part of south', how: 'follow', got: 0 },
    { k: 'cutOff', person: 'player of north', ms: 900, most: 8000 },
    { k: 'job', id: 'import 1', effects: 1, told: 'done' },
  ];
}

function partHistory({ id: part, ensemble }: { id: string; ensemble: string }): Happened[] {
  const who = (by: string) => `${by} of ${ensemble}`;
  const rows: LogEntry[] = story(part).map(({ by, name, events }, index) => ({ seq: index + 1, operation: idOf(part, index + 1), name, input: {}, events, by: who(by), byName: by, at: '2026-11-26T10:00:00.000Z' }));
  const state = replay(rows);
  const refused = idOf(part, 99);
  const ops: Happened[] = rows.flatMap((row, index): Happened[] => [
    { k: 'written', t: 10 * index + 10, person: row.by, part, op: row.operation, name: row.name },
    { k: 'kept', t: 10 * index + 11, op: row.operation },
    { k: 'acknowledged', t: 10 * index + 15, op: row.operation, part, seq: row.seq },
  ]);
  const pages = ['lead', 'player'].flatMap((by): Happened[] => [
    { k: 'opened', t: 1, page: `${who(by)} 1`, person: who(by), part, seq: 0, waiting: [] },
    { k: 'rows', t: 30, page: `${who(by)} 1`, part, from: 1, ops: rows.slice(0, 3).map(({ operation }) => short(operation)) },
    { k: 'left', t: 40, page: `${who(by)} 1`, person: who(by), part, waiting: [idOf(part, 4), idOf(part, 5)] },
    { k: 'opened', t: 41, page: `${who(by)} 2`, person: who(by), part, seq: 0, waiting: [idOf(part, 4), idOf(part, 5)] },
    { k: 'rows', t: 60, page: `${who(by)} 2`, part, from: 1, ops: rows.slice(0, 5).map(({ operation }) => short(operation)) },
    { k: 'rows', t: 99, page: `${who(by)} 2`, part, from: 6, ops: rows.slice(5).map(({ operation }) => short(operation)) },
    { k: 'heard', t: 30, person: who(by), part, by: who('player') },
    { k: 'final', page: `${who(by)} 2`, person: who(by), part, seq: rows.length, state: print(state), settled: true, waiting: [], status: 'live' },
  ]);
  const log: Of<'log'> = { k: 'log', part, rows: rows.map((row) => ({ ...row, ensemble })) };
  return [
    ...ops,
    ...pages,
    { k: 'written', t: 50, person: who('lead'), part, op: refused, name: 'adopt' },
    { k: 'kept', t: 50, op: refused },
    { k: 'refused', t: 51, op: refused, part, code: 'ALREADY_DECIDED', sent: true },
    { k: 'turnedDown', part, ops: [{ op: refused, code: 'ALREADY_DECIDED' }] },
    { k: 'resent', op: idOf(part, 1), first: print(rows[0]), again: print(rows[0]) },
    { k: 'shutOut', why: 'unseated', person: who('player'), part, from: 5, to: 6 },
    { k: 'oldPage', t: 70, op: idOf(part, 77), part, status: 'oldProgram', waiting: [idOf(part, 77)] },
    { k: 'snapshot', part, seq: 4, state: print(replay(rows.slice(0, 4))) },
    { k: 'shown', part, head: rows.length, slips: slipsOf(log.rows), state: print(state) },
    log,
  ];
}
