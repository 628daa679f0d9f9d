import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evolve } from '../../../core/agreement/evolve.ts';
import { isOperationName, OPERATIONS, type OperationName } from '../../../core/agreement/registry.ts';
import { replay, take } from '../../../core/agreement/replay.ts';
import { run } from '../../../core/agreement/run.ts';
import { emptyState, type AgreementState } from '../../../core/agreement/state.ts';
import { conversations, lines, type Line } from './arbitraries.ts';
import { Conversation, FACTS, id, PRINCIPAL } from './section.ts';

function spoken(said: readonly Line[]): Conversation {
  const talk = new Conversation();
  for (const { by, name, input } of said) talk.hear(by, name, input);
  return talk;
}

/** As a database may give it back: through JSON, every object's keys the other way round. */
function throughDatabase<T>(value: T): T {
  const turned = (inner: unknown): unknown => {
    if (Array.isArray(inner)) return inner.map(turned);
    if (inner === null || typeof inner !== 'object') return inner;
    return Object.fromEntries(Object.entries(inner).reverse().map(([key, one]) => [key, turned(one)]));
  };
  return turned(JSON.parse(JSON.stringify(value))) as T;
}

function frozen<T>(value: T): T {
  if (value !== null && typeof value === 'object' && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

const RUNS = { numRuns: 300 };

describe('the lines these laws are tried on', () => {
  it('let every operation through and refuse every operation at times', () => {
    const through = new Set<string>();
    const turnedAway = new Set<string>();
    for (const said of fc.sample(conversations, { numRuns: 400, seed: 7 })) {
      const talk = new Conversation();
      for (const { by, name, input } of said) (talk.hear(by, name, input).ok ? through : turnedAway).add(name);
    }
    const names = Object.keys(OPERATIONS).sort();
    expect([...through].sort()).toEqual(names);
    expect([...turnedAway].sort()).toEqual(names);
  });
});

describe('laws of every operation', () => {
  it('deterministic: one state, line and person give one decision, also after a trip through the database', () => {
    fc.assert(
      fc.property(conversations, lines, (said, { by, name, input }) => {
        const { state } = spoken(said);
        const request = { operation: id(1), name, input };
        expect(run(throughDatabase(state), throughDatabase(request), by, FACTS)).toEqual(run(state, request, by, FACTS));
      }),
      RUNS,
    );
  });

  it('guarantee 2: a line that was let through changes nothing when it comes again, even under a new id', () => {
    fc.assert(
      fc.property(conversations, lines, (said, { by, name, input }) => {
        const talk = spoken(said);
        if (!talk.hear(by, name, input).ok) return;
        const before = talk.state;
        expect(talk.hear(by, name, input).ok).toBe(false);
        expect(talk.state).toBe(before);
      }),
      RUNS,
    );
  });

  it('guarantee 4: the log rebuilds the state, also a log that went through the database', () => {
    fc.assert(
      fc.property(conversations, (said) => {
        const { log, state } = spoken(said);
        expect(replay(log)).toEqual(state);
        expect(replay(throughDatabase(log))).toEqual(state);
        expect(log.map(({ seq }) => seq)).toEqual(log.map((_, index) => index + 1));
      }),
      RUNS,
    );
  });

  it('guarantee 6: a snapshot and the rest of the log equal the whole log', () => {
    fc.assert(
      fc.property(conversations, fc.nat(), (said, n) => {
        const { log, state } = spoken(said);
        const cut = log.length ? n % (log.length + 1) : 0;
        expect(replay(log.slice(cut), throughDatabase(replay(log.slice(0, cut))))).toEqual(state);
      }),
      RUNS,
    );
  });

  it('guarantee 5: rows that come twice or too early change nothing, and a gap is noticed', () => {
    fc.assert(
      fc.property(conversations, fc.nat(), fc.nat(), (said, a, b) => {
        const { log } = spoken(said);
        const [from, known] = [a % (log.length + 1), b % (log.length + 1)];
        const before = replay(log.slice(0, known));
        const result = take(before, log.slice(from));
        const gap = from > known && from < log.length;
        expect(result.gap).toBe(gap);
        expect(result.state).toEqual(gap || from === log.length ? before : replay(log));
      }),
      RUNS,
    );
  });

  it('guarantee 8: nobody without one of an operation’s roles changes anything, whatever they send', () => {
    fc.assert(
      fc.property(conversations, lines, fc.constantFrom('principal', 'player', 'librarian'), (said, { name, input }, role) => {
        const { state } = spoken(said);
        const actor = { ...PRINCIPAL, roles: [role] };
        const allowed = (OPERATIONS[name].roles as readonly string[]).includes(role);
        const decision = run(state, { operation: id(1), name, input }, actor, FACTS);
        if (!allowed) expect(decision).toMatchObject({ ok: false, refusal: { code: 'NOT_YOUR_ROLE' } });
        expect(run(state, { operation: id(1), name, input }, { ...actor, roles: [] }, FACTS)).toMatchObject({ ok: false, refusal: { code: 'NOT_YOUR_ROLE' } });
        if (allowed && !decision.ok) expect(decision.refusal.code).not.toBe('NOT_YOUR_ROLE');
      }),
      RUNS,
    );
  });

  it('guarantee 11: what has been decided stays decided; its slip, votes and decision never change again', () => {
    fc.assert(
      fc.property(conversations, (said) => {
        const { log } = spoken(said);
        const closed = new Map<string, unknown>();
        let state = emptyState();
        for (const row of log) {
          state = evolve(state, row);
          for (const [name, proposal] of closed) expect(state.proposals[name]).toEqual(proposal);
          for (const proposal of Object.values(state.proposals)) if (proposal.status !== 'open') closed.set(proposal.id, proposal);
        }
      }),
      RUNS,
    );
  });

  it('no mark is ever lost: ink only grows, and a superseded mark says by whom and stays so', () => {
    fc.assert(
      fc.property(conversations, (said) => {
        const { log } = spoken(said);
        let state: AgreementState = emptyState();
        for (const row of log) {
          const next = evolve(state, row);
          state.ink.forEach((old, index) => {
            const now = next.ink[index]!;
            expect({ ...now, superseded: null }).toEqual({ ...old, superseded: null });
            if (old.superseded) expect(now.superseded).toEqual(old.superseded);
            else if (now.superseded) expect(now.superseded).toMatchObject({ seq: row.seq, by: row.by });
          });
          state = next;
        }
      }),
      RUNS,
    );
  });

  it('no line changes a state, a row or an input it was given', () => {
    fc.assert(
      fc.property(conversations, lines, (said, { by, name, input }) => {
        const state = frozen(spoken(said).state);
        const decision = run(state, frozen({ operation: id(1), name, input }), by, FACTS);
        if (decision.ok) evolve(state, frozen({ seq: state.seq + 1, operation: id(1), name, input, events: decision.events, by: by.id, byName: by.name, at: '2026-11-25T12:00:00Z' }));
      }),
      RUNS,
    );
  });

  it('a slip letter is never given twice in one measure', () => {
    fc.assert(
      fc.property(conversations, (said) => {
        const given = new Set<string>();
        let state = emptyState();
        for (const row of spoken(said).log) {
          const before = state;
          state = evolve(state, row);
          for (const { id: name, from, letter } of Object.values(state.proposals)) {
            const old = before.proposals[name];
            if (old?.from === from) expect(letter).toBe(old.letter);
            else {
              expect(given).not.toContain(`${from}${letter}`);
              given.add(`${from}${letter}`);
            }
          }
        }
      }),
      RUNS,
    );
  });
});

describe('the edge', () => {
  it('guarantee 10: whatever arrives, there is a decision and never a crash', () => {
    const names = fc.oneof(fc.constantFrom(...(Object.keys(OPERATIONS) as OperationName[])), fc.string(), fc.constantFrom('__proto__', 'constructor', 'toString'));
    fc.assert(
      fc.property(conversations, names, fc.oneof(fc.anything(), fc.jsonValue()), (said, name, input) => {
        const decision = run(spoken(said).state, { operation: id(1), name, input }, PRINCIPAL, FACTS);
        if (!isOperationName(name)) expect(decision).toMatchObject({ ok: false, refusal: { code: 'BAD_INPUT' } });
        expect(typeof decision.ok).toBe('boolean');
      }),
      { numRuns: 500 },
    );
  });

  it('a row out of turn is a bug, not a state', () => {
    const { log } = spoken([{ by: PRINCIPAL, name: 'moveOn', input: { stage: 'printed' } }]);
    expect(() => evolve(replay(log), log[0]!)).toThrow('Row 1 does not follow row 1.');
    expect(() => evolve(emptyState(), { ...log[0]!, seq: 2 })).toThrow('Row 2 does not follow row 0.');
  });

  it('an event this program does not know is a bug, not a state', () => {
    const { log } = spoken([{ by: PRINCIPAL, name: 'moveOn', input: { stage: 'printed' } }]);
    expect(() => replay([{ ...log[0]!, events: [{ type: 'sung' } as never] }])).toThrow('Unknown event');
  });
});
