import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../../client/agreement/session.ts';
import { evolve } from '../../../core/agreement/evolve.ts';
import type { OperationInput, OperationName } from '../../../core/agreement/registry.ts';
import { replay } from '../../../core/agreement/replay.ts';
import { emptyState } from '../../../core/agreement/state.ts';
import { lines, type Line } from '../../core/agreement/arbitraries.ts';
import { id, LIBRARIAN, PARTNER, PLAYER, PRINCIPAL, slip } from '../../core/agreement/section.ts';
import { FAIR, PART, type Weather } from './network.ts';
import { Rehearsal, type Stand } from './stands.ts';

const PEOPLE = [PRINCIPAL, PARTNER, PLAYER, LIBRARIAN];

type Step =
  | { what: 'say'; line: Line }
  | { what: 'cut' | 'mend' | 'reload' | 'demote' | 'restore'; who: number }
  | { what: 'wait'; ms: number }
  | { what: 'head' };

/** Most of these get a name of their own; otherwise few lines would be let through. */
const MAKERS = new Set<OperationName>(['propose', 'comment', 'mute']);

const OPENING: Step[] = [0, 1, 2, 3].map((n) => ({ what: 'say', line: { by: n % 2 ? PARTNER : PLAYER, name: 'propose', input: slip(n) } }));

const who = fc.nat({ max: PEOPLE.length - 1 });
const steps: fc.Arbitrary<Step> = fc.oneof(
  { weight: 12, arbitrary: fc.record({ what: fc.constant('say' as const), line: lines }) },
  { weight: 4, arbitrary: fc.record({ what: fc.constant('wait' as const), ms: fc.constantFrom(1, 20, 150, 2500) }) },
  { weight: 2, arbitrary: fc.record({ what: fc.constantFrom('cut' as const, 'mend' as const, 'mend' as const), who }) },
  { weight: 1, arbitrary: fc.record({ what: fc.constantFrom('reload' as const, 'demote' as const, 'restore' as const, 'restore' as const), who }) },
  { weight: 1, arbitrary: fc.constant({ what: 'head' as const }) },
);

/** Small, seeded and good enough for weather. */
function chance(seed: number): () => number {
  let state = seed | 0;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function storm(seed: number): Weather {
  const next = chance(seed);
  return { lag: () => 1 + Math.floor(next() * 120), loses: () => next() < 0.15, doubles: () => next() < 0.1 };
}

interface Written {
  person: string;
  operation: string;
  outcome: Promise<Outcome>;
}

const tally = { operations: 0, written: 0, refusedThere: 0, refusedHere: 0, cuts: 0, reloads: 0, asked: 0 };

async function play(script: readonly Step[], seed: number) {
  const all = new Rehearsal();
  all.network.weather = storm(seed);
  const stands: Stand[] = PEOPLE.map((me) => all.open(me));
  const written: Written[] = [];
  const outlived = new Set<string>();
  for (const [index, step] of [...OPENING, ...script].entries()) {
    if (step.what === 'wait') await all.clock.pass(step.ms);
    else if (step.what === 'head') all.network.tell('head', { part: PART, seq: all.authority.log.length });
    else if (step.what === 'say') {
      const stand = stands.find(({ me }) => me.id === step.line.by.id);
      if (!stand) continue;
      const input = index > 3 && index % 3 && MAKERS.has(step.line.name) ? { ...(step.line.input as object), id: id(1000 + index) } : step.line.input;
      const operation = stand.session.submit(step.line.name, input as OperationInput<OperationName>);
      written.push({ person: stand.me.id, operation, outcome: stand.session.settled(operation) });
    } else {
      const stand = stands[step.who]!;
      const { me } = stand;
      if (step.what === 'cut') all.network.cut(me.id);
      else if (step.what === 'mend') all.network.mend(me.id);
      else if (step.what === 'demote') all.authority.people.set(me.id, { ...me, roles: [] });
      else if (step.what === 'restore') all.authority.people.set(me.id, me);
      else {
        tally.reloads += 1;
        await all.clock.pass(0);
        stand.session.getSnapshot().waiting.forEach(({ operation }) => outlived.add(operation));
        // The page may be given a state some rows old.
        stands[step.who] = all.reload(stand, all.authority.log.slice(0, -2).reduce(evolve, emptyState()));
      }
      tally.cuts += step.what === 'cut' ? 1 : 0;
    }
  }
  all.network.weather = FAIR;
  await all.clock.pass(3000);
  for (const me of PEOPLE) all.network.mend(me.id);
  await all.clock.pass(30_000);
  all.network.tell('head', { part: PART, seq: all.authority.log.length });
  await all.clock.pass(3000);
  return { all, stands, written, outlived };
}

async function outcomeOf({ outcome }: Written): Promise<Outcome | 'page closed'> {
  return Promise.race([outcome, new Promise<'page closed'>((resolve) => setImmediate(() => resolve('page closed')))]);
}

describe('whatever the order of messages, losses, doubles, cuts and reloads', () => {
  it('the guarantees of the log hold', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(steps, { minLength: 10, maxLength: 60, size: 'max' }), fc.integer(), async (script, seed) => {
        const { all, stands, written, outlived } = await play(script, seed);
        const { log } = all.authority;
        tally.operations += written.length;
        tally.written += log.length;
        tally.asked += all.authority.heard.length;

        // 2 and 3: one row an id, dense.
        expect(new Set(log.map(({ operation }) => operation)).size).toBe(log.length);
        expect(log.map(({ seq }) => seq)).toEqual(log.map((_, index) => index + 1));

        // 4: every quiet client equals the replayed log, and nothing waits.
        const truth = replay(log);
        for (const { session } of stands) {
          const { state, confirmed, waiting, caughtUp, status } = session.getSnapshot();
          expect({ status, caughtUp, waiting }).toEqual({ status: 'live', caughtUp: true, waiting: [] });
          expect(confirmed).toEqual(truth);
          expect(state).toEqual(truth);
        }

        // 1 and 7: what was acknowledged is in the log at its place, what was refused is not.
        for (const one of written) {
          const outcome = await outcomeOf(one);
          const row = log.find(({ operation }) => operation === one.operation);
          if (outcome === 'page closed') continue;
          if (outcome.ok) expect(row?.seq).toBe(outcome.seq);
          else expect(row).toBeUndefined();
          if (!outcome.ok) tally[all.authority.heard.includes(one.operation) ? 'refusedThere' : 'refusedHere'] += 1;
        }

        // 9: what waited when a page was closed reached the library under its own id.
        for (const operation of outlived) expect(all.authority.heard).toContain(operation);

        // The rows of one person stand in the order they were written.
        for (const me of PEOPLE) {
          const mine = written.filter(({ person }) => person === me.id).map(({ operation }) => operation);
          const rows = log.filter(({ by }) => by === me.id).map(({ operation }) => operation);
          expect(rows).toEqual(mine.filter((operation) => rows.includes(operation)));
        }
      }),
      { numRuns: Number(process.env.BOWLINE_RUNS ?? 150) },
    );
    console.log('convergence:', JSON.stringify(tally));
    for (const count of Object.values(tally)) expect(count).toBeGreaterThan(0);
    expect(tally.asked).toBeGreaterThan(tally.written + tally.refusedThere);
  });
});
