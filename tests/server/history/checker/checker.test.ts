import { describe, expect, it } from 'vitest';
import type { Happened, Of } from '../record/happened.ts';
import { print } from '../record/record.ts';
import { check, GUARANTEES } from './check.ts';
import { idOf, soundHistory } from './sound.ts';

const PART = 'part of north';
const id = (n: number) => idOf(PART, n);

type Change<Kind extends Happened['k']> = (one: Of<Kind>) => Happened | Happened[] | null;

/** The first line of a kind on the north's part (or at all) is changed, doubled or left out. */
function at<Kind extends Happened['k']>(kind: Kind, change: Change<Kind>, which: (one: Of<Kind>) => boolean = () => true) {
  return (history: Happened[]): Happened[] => {
    const found = history.findIndex((one) => one.k === kind && (!('part' in one) || one.part === PART || one.k === 'pried') && which(one as Of<Kind>));
    expect(found).toBeGreaterThanOrEqual(0);
    return history.toSpliced(found, 1, ...[change(history[found] as Of<Kind>) ?? []].flat());
  };
}

const rows = (change: (rows: Of<'log'>['rows']) => Of<'log'>['rows']) => at('log', (one) => ({ ...one, rows: change(one.rows) }));
const renumbered = (list: Of<'log'>['rows']) => list.map((row, index) => ({ ...row, seq: index + 1 }));
const more = (...lines: Happened[]) => (history: Happened[]) => [...history, ...lines];

/** Everything that a library could do wrong, one at a time: which guarantee must find it. */
const WRONGS: [guarantee: number, what: string, wrong: (history: Happened[]) => Happened[]][] = [
  [1, 'an acknowledged row is lost from the end of the log', rows((list) => list.slice(0, -1))],
  [1, 'an acknowledged row is lost from the middle and the rest is numbered anew', rows((list) => renumbered(list.toSpliced(6, 1)))],
  [1, 'an acknowledgement names another place', at('acknowledged', (one) => ({ ...one, seq: one.seq + 1 }))],
  [1, 'two rows change places after they were acknowledged', rows((list) => renumbered(list.toSpliced(2, 2, list[3]!, list[2]!)))],
  [2, 'one operation has two rows', rows((list) => renumbered([...list, list[6]!]))],
  [2, 'one operation has a row in two parts of an ensemble', (history) => inSecondPart(history)],
  [2, 'an operation sent again is answered otherwise', at('resent', (one) => ({ ...one, again: print('other') }))],
  [2, 'an operation is refused after it was acknowledged', more({ k: 'refused', t: 80, op: id(1), part: PART, code: 'LOCKED', sent: true })],
  [2, 'an operation is acknowledged at two places', more({ k: 'acknowledged', t: 80, op: id(1), part: PART, seq: 7 })],
  [2, 'a refusal is forgotten', at('turnedDown', (one) => ({ ...one, ops: [] }))],
  [3, 'a number is left out', rows((list) => list.map((row) => (row.seq > 4 ? { ...row, seq: row.seq + 1 } : row)))],
  [3, 'a number is given twice', rows((list) => list.map((row) => (row.seq === 5 ? { ...row, seq: 4 } : row)))],
  [3, 'the head says more than the log has', at('shown', (one) => ({ ...one, head: one.head + 1 }))],
  [4, 'a quiet page has missed the last row', at('final', (one) => ({ ...one, state: print('earlier') }))],
  [4, 'a page never came to rest', at('final', (one) => ({ ...one, status: 'away' }))],
  [4, 'a vote is lost on the server', at('shown', (one) => ({ ...one, slips: { ...one.slips, [`B ${PART}`]: { ...one.slips[`B ${PART}`]!, votes: {} } } }))],
  [4, 'a vote counts for the other side', at('shown', (one) => ({ ...one, slips: { ...one.slips, [`A ${PART}`]: { ...one.slips[`A ${PART}`]!, votes: { 1: { 'lead of north': 'for' } } } } }))],
  [4, 'an adopted proposal is shown open', at('shown', (one) => ({ ...one, slips: { ...one.slips, [`A ${PART}`]: { ...one.slips[`A ${PART}`]!, status: 'open' } } }))],
  [5, 'a page is given the rows in another order', at('rows', (one) => ({ ...one, ops: one.ops.toReversed() }))],
  [5, 'a page takes a row past a gap', at('rows', (one) => ({ ...one, from: one.from + 1 }))],
  [5, 'a page takes a row twice', at('rows', (one) => [one, one])],
  [5, 'a page loses a row in the middle', at('rows', (one) => ({ ...one, ops: one.ops.toSpliced(1, 1) }))],
  [6, 'a snapshot is of another state', at('snapshot', (one) => ({ ...one, state: print('other') }))],
  [6, 'a snapshot is of rows that were never committed', at('snapshot', (one) => ({ ...one, seq: 200 }))],
  [7, 'a refused operation has a row', at('refused', (one) => ({ ...one, op: id(3) }))],
  [7, 'the library remembers a refusal and has the row', at('turnedDown', (one) => ({ ...one, ops: [...one.ops, { op: id(3), code: 'LOCKED' }] }))],
  [7, 'a page still shows what was refused', at('final', (one) => ({ ...one, settled: false }))],
  [8, 'somebody without a seat writes a row', at('shutOut', (one) => ({ ...one, from: 7, to: 8 }))],
  [8, 'somebody signed out writes a row', at('shutOut', (one) => ({ ...one, why: 'signedOut', from: 1, to: 1 }))],
  [8, 'somebody signed out keeps the line', at('cutOff', (one) => ({ ...one, ms: 60_000 }))],
  [9, 'what was written is neither logged nor refused', more({ k: 'written', t: 90, person: 'lead of north', part: PART, op: id(55), name: 'comment' }, { k: 'kept', t: 91, op: id(55) })],
  [9, 'a row is there that nobody wrote', at('written', () => null)],
  [9, 'a page waits for ever', at('final', (one) => ({ ...one, waiting: [id(99)] }))],
  [9, 'a reload turns two waiting operations round', at('opened', (one) => ({ ...one, waiting: one.waiting.toReversed() }), (one) => one.waiting.length > 0)],
  [10, 'an old page is not told', at('oldPage', (one) => ({ ...one, status: 'live' }))],
  [10, 'an old page loses its line', at('oldPage', (one) => ({ ...one, waiting: [] }))],
  [10, 'an old page writes', at('oldPage', (one) => ({ ...one, op: id(2), waiting: [id(2)] }))],
  [11, 'a vote is counted after the decision', rows((list) => renumbered([...list, { ...list[1]!, operation: id(56) }]))],
  [11, 'a proposal is decided twice', rows((list) => renumbered([...list, { ...list[5]!, operation: id(57) }]))],
  [11, 'a row written after another was acknowledged stands before it', at('written', (one) => ({ ...one, t: 79 }), (one) => one.op === id(2))],
  [11, 'a vote is about a proposal that was never laid', rows((list) => renumbered(list.slice(1)))],
  [12, 'somebody is sent a row of the other ensemble', more({ k: 'heard', t: 60, person: 'lead of south', part: PART, by: 'lead of north' })],
  [12, 'somebody of the other ensemble writes', rows((list) => list.map((row) => (row.seq === 7 ? { ...row, by: 'player of south' } : row)))],
  [12, 'a row is kept under the other ensemble', rows((list) => list.map((row) => (row.seq === 7 ? { ...row, ensemble: 'south' } : row)))],
  [12, 'asking for a part of the other ensemble gives rows', at('pried', (one) => ({ ...one, got: 3 }))],
  [13, 'a job has its effect twice', at('job', (one) => ({ ...one, effects: 2 }))],
  [13, 'a job is said done and has no effect', at('job', (one) => ({ ...one, effects: 0 }))],
  [13, 'a job that was refused has its effect', at('job', (one) => ({ ...one, told: 'failed' }))],
  [14, 'a server ends because the database was away', more({ k: 'fell', t: 50, name: 'server 1', said: ['Unhandled'] })],
];

function inSecondPart(history: Happened[]): Happened[] {
  const { rows: list } = history.find((one) => one.k === 'log' && one.part === PART) as Of<'log'>;
  return [...history.map((one) => (one.k === 'cast' ? { ...one, parts: [...one.parts, { id: 'second part', ensemble: 'north' }] } : one)), { k: 'log', part: 'second part', rows: list.slice(0, 1) }];
}

describe('the checker of histories', () => {
  it('finds nothing in a history in which everything holds', () => {
    expect(check(soundHistory())).toEqual([]);
  });

  it.each(WRONGS)('guarantee %i: %s', (guarantee, _what, wrong) => {
    const found = check(wrong(soundHistory()));
    expect(found.filter((one) => one.guarantee === guarantee)).not.toEqual([]);
    expect(found.every(({ what, shown }) => what.length > 0 && Array.isArray(shown))).toBe(true);
  });

  it('each guarantee is broken by some row of the table', () => {
    expect([...new Set(WRONGS.map(([guarantee]) => guarantee))]).toEqual(GUARANTEES.map((one) => one.id));
  });
});
