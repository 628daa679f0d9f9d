import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { staggerPlan } from '../../../core/bowing/stagger/plan.ts';
import { checkPart } from '../../../core/check/checkPart.ts';
import { type PlanRequest, sectionProblem, type SectionProblem } from '../../../core/check/sectionPlan.ts';
import { sectionPicture } from '../../../core/check/sectionPicture.ts';
import type { Mark } from '../../../core/music/mark.ts';
import type { StringPart } from '../../../core/music/part.ts';
import { type SeatId, seatsFor } from '../../../core/music/seat.ts';
import { partOf } from '../../support/partBuilder.ts';

const QUICK = { rounds: 1, tries: 300, pivots: 2000, near: 0 };

const request = (music: string, players: number, changes: Partial<PlanRequest> = {}): PlanRequest => {
  const part = partOf(music) as StringPart;
  const notes = part.measures.flatMap((measure) => measure.notes).filter((note) => !note.rest);
  return { part, seats: seatsFor(players), marks: [], settings: {}, absent: [], first: notes[0]!.id, last: notes.at(-1)!.id, ...changes };
};

function plannedOf(asked: PlanRequest): SectionProblem {
  const found = sectionProblem(asked);
  if ('refusal' in found) throw new Error(found.refusal.text);
  return found.planned;
}

/** The marks of a quick plan, over the marks that stood. */
function lay(asked: PlanRequest): { plan: ReturnType<typeof staggerPlan>; added: Mark[]; all: Mark[]; planned: SectionProblem } {
  const planned = plannedOf(asked);
  const plan = staggerPlan(planned.problem, planned.settings, QUICK);
  const added = planned.marksFor(plan.players.map(({ changes }) => changes));
  return { plan, added, all: [...asked.marks, ...added], planned };
}

const findings = (asked: PlanRequest, marks: Mark[]) => checkPart({ part: asked.part, seats: asked.seats.filter((seat) => !asked.absent.includes(seat)), marks, settings: asked.settings });
const PEDAL = '{pp} {q=60} G3:4~ | G3:4~ | G3:4~ | G3:4~ | G3:4~ | G3:4';
const SLUR = '{p} {q=60} D5:2( E5:2 | F5:1 G5:1 A5:2 | B5:3 A5:1 | G5:2 F5:2 | E5:4 | D5:4)';
const CHAIN = '{p} {q=54} D5:2( E5:2 | F5:4) | G5:2( A5:2 | B5:4) | A5:4( | G5:4)';

describe('a passage of a part as a problem', { timeout: 240_000 }, () => {
  it('has a limit of one bow at its loudest dynamic, on the section\'s own table and instrument', () => {
    const { problem } = plannedOf(request('{pp} {q=60} G3:4~ | {p} G3:4~ | G3:4', 5, { settings: { bowSeconds: { p: 8 } } }));
    expect(problem.players[0]!.limit).toBeCloseTo(8, 5);
    expect(problem.duration).toBe(12);
  });

  it('seats everybody who is there: an odd last desk, and nobody on an absent chair', () => {
    const { problem } = plannedOf(request(PEDAL, 7, { absent: ['2i'] }));
    expect(problem.players.map(({ id, desk, seat }) => `${id} ${desk} ${seat}`)).toEqual(['1o 1 outside', '1i 1 inside', '2o 2 outside', '3o 3 outside', '3i 3 inside', '4o 4 outside']);
  });

  it('knows which note each player shifts to, from that player\'s own fingers', () => {
    const marks: Mark[] = [
      { note: 'm1n0', value: { kind: 'finger', finger: 1 }, seats: ['1o'] },
      { note: 'm1n0', value: { kind: 'string', string: 1 }, seats: ['1o'] },
      { note: 'm1n1', value: { kind: 'finger', finger: 1 }, seats: ['1o'] },
      { note: 'm1n1', value: { kind: 'string', string: 1 }, seats: ['1o'] },
    ];
    const { problem, places } = plannedOf(request('{p} {q=60} F5:2( A5:2 | A5:4 | A5:4)', 2, { marks }));
    const [outside, inside] = problem.players;
    expect(outside!.shifts.map((i) => [places[i]!.note, places[i]!.after])).toEqual([['m1n1', 0]]);
    expect(inside!.shifts).toEqual([]);
  });

  it('ends so that the next bow comes out as it is marked', () => {
    const end = (music: string, last: string) => plannedOf(request(music, 4, { first: 'm1n0', last })).problem.end;
    expect(end('{p} {q=60} G3:4~ | G3:4 | A3:2<up> B3:2', 'm2n0')).toBe('down');
    expect(end('{p} {q=60} G3:4~ | G3:4 | A3:2 B3:2<up>', 'm2n0')).toBe('up');
    expect(end('{p} {q=60} G3:4~ | G3:2 r:2 | A3:2<up> B3:2', 'm2n0')).toBeNull();
  });

  it('starts the way the bows before it lead', () => {
    const start = (music: string) => plannedOf(request(music, 4, { first: 'm2n0', last: 'm3n0' })).problem.start;
    expect(start('{p} {q=60} A3:2<down> B3:2 | G3:4~ | G3:4')).toBe('down');
    expect(start('{p} {q=60} A3:2 B3:2<down> | G3:4~ | G3:4')).toBe('up');
  });

  it.each([
    ['a rest inside', '{p} {q=60} G3:4 | r:4 | G3:4', 'REST_INSIDE', 'there is a rest'],
    ['plucked notes', '{p} {q=60} G3:4 | {pizz} G3:4', 'PLUCKED_INSIDE', 'plucked'],
    ['a tremolo', '{p} {q=60} G3:4* | G3:4*', 'TREMOLO_INSIDE', 'tremolo'],
    ['short bows of their own', '{p} {q=60} G3:4 | G3:1/2 A3:1/2 B3:3', 'SEPARATE_BOWS', 'short bows'],
    ['two voices', '{p} {q=60} G3:4 && B3:4', 'NOT_ONE_VOICE', 'one voice'],
  ])('is refused with the measure and what to do: %s', (_, music, code, words) => {
    const found = sectionProblem(request(music, 4));
    expect(found).toMatchObject({ refusal: { code, text: expect.stringContaining(words) as unknown } });
  });

  it('is refused when nobody is there', () => {
    expect(sectionProblem(request(PEDAL, 2, { absent: ['1o', '1i'] }))).toMatchObject({ refusal: { code: 'NOBODY' } });
  });
});

describe('the marks of a plan', { timeout: 240_000 }, () => {
  it.each([['a pedal note', PEDAL], ['a long slur', SLUR], ['a chain of slurs', CHAIN]])('make each seat bow exactly as planned: %s', (_, music) => {
    const asked = request(music, 9);
    const { plan, all, planned } = lay(asked);
    expect(plan.feasible).toBe(true);
    const [passage] = sectionPicture({ part: asked.part, seats: asked.seats, marks: all, settings: {} });
    for (const { seat, bows } of passage!.seats) {
      const { changes, directions } = plan.players.find(({ id }) => id === seat)!;
      expect(bows.map(({ direction }) => direction)).toEqual(directions);
      expect(bows.slice(1).map(({ start }) => start)).toEqual(changes.map((i) => planned.places[i]!.second));
    }
  });

  it('stand on the part of the seat that changes only; what is for all names no seats', () => {
    const { added } = lay(request(CHAIN, 9));
    for (const { value, seats } of added) {
      if (value.kind === 'change') expect(seats!.length).toBeLessThan(9);
      else expect(seats).toBeUndefined();
    }
    expect(added.filter(({ value }) => value.kind === 'slur').map(({ note }) => note)).toEqual(['m2n0', 'm4n0']);
  });

  it('leave an absent player out by name', () => {
    const { added } = lay(request(PEDAL, 8, { absent: ['2i'] }));
    expect(added.every(({ seats }) => seats && !seats.includes('2i'))).toBe(true);
  });

  it('laid a second time add nothing', () => {
    const asked = request(SLUR, 6);
    const { plan, all } = lay(asked);
    const again = plannedOf({ ...asked, marks: all });
    expect(again.marksFor(plan.players.map(({ changes }) => changes))).toEqual([]);
  });

  it('take away the changes of another plan, a split and a bow sign inside', () => {
    const old: Mark[] = [
      { note: 'm2n0', value: { kind: 'change', after: 0 }, seats: ['1o', '2i'] },
      { note: 'm5n0', value: { kind: 'change', after: '3/2' }, seats: ['1i'] },
      { note: 'm3n0', value: { kind: 'slur', slur: 'split' } },
      { note: 'm4n0', value: { kind: 'bow', bow: 'up' } },
    ];
    const asked = request(SLUR, 6, { marks: old });
    const { plan, all } = lay(asked);
    const [passage] = sectionPicture({ part: asked.part, seats: asked.seats, marks: all, settings: {} });
    expect(passage!.seats.map(({ bows }) => bows.length - 1)).toEqual(plan.players.map(({ changes }) => changes.length));
  });

  const seatsAway = fc.integer({ min: 0, max: 2 });
  const length = fc.constantFrom('1', '1/2', '3/2', '2', '4', '3');
  const line = fc.record({
    kind: fc.constantFrom('pedal', 'slur', 'chain'),
    tempo: fc.integer({ min: 40, max: 120 }),
    dynamic: fc.constantFrom('pp', 'p', 'mp', 'mf'),
    measures: fc.integer({ min: 3, max: 9 }),
    lengths: fc.array(length, { minLength: 40, maxLength: 40 }),
    before: fc.boolean(),
    after: fc.constantFrom('', 'A4:1 B4:1 C5:2', 'A4:1<up> B4:3', 'r:2 A4:2'),
  });
  type Line = typeof line extends fc.Arbitrary<infer T> ? T : never;

  function musicOf({ kind, tempo, dynamic, measures, lengths, before, after }: Line): string {
    const rest = [...lengths];
    const bars = Array.from({ length: measures }, (_, m) => {
      const notes: string[] = [];
      for (let left = 4; left > 0; ) {
        const next = rest.shift() ?? '4';
        const asked = next.includes('/') ? Number(next[0]) / 2 : Number(next);
        const whole = kind === 'pedal' ? 4 : Math.min(left, kind === 'chain' ? Math.max(2, asked) : asked);
        const pitch = kind === 'pedal' ? 'G3' : `${'DEFGAB'[(m * 3 + notes.length) % 6]!}5`;
        const isLast = m === measures - 1 && left - whole <= 0;
        const opens = notes.length === 0 && (kind === 'chain' ? m % 2 === 0 : kind === 'slur' && m === 0);
        const closes = left - whole <= 0 && (kind === 'chain' ? m % 2 === 1 || isLast : kind === 'slur' && isLast);
        notes.push(`${pitch}:${Number.isInteger(whole) ? whole : `${whole * 2}/2`}${opens ? '(' : ''}${closes ? ')' : ''}${kind === 'pedal' && !isLast ? '~' : ''}`);
        left -= whole;
      }
      return notes.join(' ');
    });
    return [`{${dynamic}} {q=${tempo}} ${before ? 'D4:2 E4:2' : ''}`, ...bars, after].map((bar) => bar.trim()).filter((bar) => bar !== '').join(' | ').replace(/(\{q=\d+\}) \|/, '$1');
  }

  it('of a plan that holds every rule give no finding about desks, the section, the bow or the signs on the page', () => {
    let planned = 0;
    fc.assert(fc.property(line, fc.integer({ min: 2, max: 14 }), seatsAway, (shape, players, away) => {
      const start = shape.before ? 2 : 1;
      const absent = (['1i', '2o'] as SeatId[]).slice(0, Math.min(away, players - 1));
      const music = musicOf(shape);
      const asked = request(music, players, { absent, first: `m${start}n0`, last: `m${start + shape.measures - 1}n0` });
      const { plan, all, planned: { problem } } = lay(asked);
      if (!plan.feasible) return;
      planned++;
      const found = findings(asked, all).filter(({ rule }) => /^(desk|section|notation|bow)\//.test(rule));
      const onBarline = plan.players.some(({ changes }) => changes.some((i) => problem.instants[i]!.onBarline));
      expect(found.filter(({ rule }) => !(onBarline && rule === 'section/change-on-barline')).map(({ text }) => text)).toEqual([]);
    }), { numRuns: 40 });
    expect(planned).toBeGreaterThan(20);
  });
});
