import fc from 'fast-check';
import { OPERATIONS, type OperationName } from '../../../core/agreement/registry.ts';
import type { Actor } from '../../../core/agreement/people.ts';
import type { Mark, MarkValue } from '../../../core/music/mark.ts';
import { EVERYBODY, FACTS, id } from './section.ts';

export interface Line {
  by: Actor;
  name: OperationName;
  input: unknown;
}

function mostly<T>(usual: T[], rare: T): fc.Arbitrary<T> {
  return fc.oneof({ weight: 12, arbitrary: fc.constantFrom(...usual) }, { weight: 1, arbitrary: fc.constant(rare) });
}

/** Few names, so that lines meet each other; 0 to 3 are proposals, comments and mutes alike. */
const ids = fc.nat({ max: 3 }).map(id);
const perhaps = fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: ids });
const measures = mostly([1, 2], 5);
const somebody = fc.constantFrom(...EVERYBODY);
/** Mostly people who may. */
function speakers(name: OperationName): fc.Arbitrary<Actor> {
  const allowed = EVERYBODY.filter(({ roles }) => OPERATIONS[name].roles.some((role) => roles.includes(role)));
  return fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...allowed) }, { weight: 1, arbitrary: somebody });
}
const seatSets = fc.oneof(
  { weight: 20, arbitrary: fc.constant('all' as const) },
  { weight: 20, arbitrary: fc.subarray([...FACTS.seats], { minLength: 1, maxLength: 3 }).map((seats) => [...seats]) },
  { weight: 1, arbitrary: fc.constant('4o').map((seat) => [seat]) },
);
const times = fc.constantFrom(0, 1, '1/2', '3/2', '6/4');

const values: fc.Arbitrary<MarkValue> = fc.oneof(
  fc.record({ kind: fc.constant('finger' as const), finger: fc.constantFrom(0 as const, 1 as const, 2 as const, 'thumb' as const) }),
  fc.record({ kind: fc.constant('string' as const), string: fc.integer({ min: 1, max: 4 }) }),
  fc.record({ kind: fc.constant('bow' as const), bow: fc.constantFrom('up' as const, 'down' as const) }),
  fc.record({ kind: fc.constant('change' as const), after: times }),
  fc.record({ kind: fc.constant('none' as const), slot: fc.constantFrom('finger' as const, 'bow' as const, 'change' as const) }),
  fc.record({ kind: fc.constant('none' as const), slot: fc.constant('change' as const), after: times }),
);

export const marks: fc.Arbitrary<Mark> = fc.record(
  {
    note: fc.oneof({ weight: 60, arbitrary: fc.constantFrom(...[...FACTS.notes.keys()].slice(0, 4)) }, { weight: 1, arbitrary: fc.constant('gone') }),
    value: values,
    seats: seatSets,
  },
  { requiredKeys: ['note', 'value'] },
);

const content = {
  from: fc.constantFrom(1, 1, 1, 1, 2),
  to: mostly([2, 3, 4], 5),
  seats: seatSets,
  why: mostly(['Darker', 'As the violas', 'Softer'], ' '),
  marks: fc.array(marks, { minLength: 1, maxLength: 3 }),
};

const INPUTS: Record<OperationName, fc.Arbitrary<unknown>> = {
  propose: fc.record({ id: ids, ...content }),
  bringIn: fc.record({ id: ids, ...content }),
  revise: fc.record({ proposal: ids, ...content }),
  withdraw: fc.record({ proposal: ids, why: fc.constantFrom('', 'No') }),
  castVote: fc.record({ proposal: ids, revision: mostly([1], 2), measure: measures, vote: fc.constantFrom('for', 'against', null) }),
  comment: fc.record({ id: ids, measure: measures, proposal: perhaps, answers: perhaps, text: mostly(['Hm'], '') }),
  resolveComment: fc.record({ id: ids }),
  adopt: fc.record({ proposal: ids, revision: mostly([1], 2) }),
  setAside: fc.record({ proposal: ids, why: fc.constant('No') }),
  restore: fc.record({ seq: mostly([0, 2, 5, 8, 12], 500), why: fc.constant('Back') }),
  mute: fc.record({ id: ids, rule: fc.constant('r/one'), place: fc.constantFrom('m1n0', '*'), reason: fc.constant('Known'), fingerprint: fc.constantFrom('f1', 'f2', null) }),
  unmute: fc.record({ id: ids }),
  moveOn: fc.record({ stage: fc.constantFrom('pulled', 'inkedIn', 'onStands') }),
  lock: fc.constant({}),
  unlock: fc.constant({}),
};

const lineOf = (name: OperationName) => fc.record({ by: speakers(name), name: fc.constant(name), input: INPUTS[name] });
const WEIGHTS: Partial<Record<OperationName, number>> = { propose: 8, adopt: 5, revise: 4, castVote: 4, unlock: 3, comment: 3, resolveComment: 3 };

/** What anybody might say at any time: every operation, by everybody, in place and out of place. */
export const lines: fc.Arbitrary<Line> = fc.oneof(...(Object.keys(INPUTS) as OperationName[]).map((name) => ({ arbitrary: lineOf(name), weight: WEIGHTS[name] ?? 1 })));

/** A few proposals first, so that there is something to talk about. */
export const conversations: fc.Arbitrary<Line[]> = fc
  .tuple(fc.array(lineOf('propose'), { maxLength: 6, size: 'max' }), fc.array(lines, { maxLength: 60, size: 'max' }))
  .map(([proposals, rest]) => [...proposals, ...rest]);
