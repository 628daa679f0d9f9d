import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPart } from '../../../../core/check/checkPart.ts';
import { RULES } from '../../../../core/check/registry.ts';
import { standingCheck } from '../../../../core/check/standing/standingCheck.ts';
import type { Mark } from '../../../../core/music/mark.ts';
import type { StringPart } from '../../../../core/music/part.ts';
import { seatsFor } from '../../../../core/music/seat.ts';
import { chance } from '../../../support/chance.ts';
import { anyMark, anyMarks, anyPassage, longPart } from '../../../support/longPart.ts';


describe('a check that is kept while marks change', () => {
  it('finds after every edit what a whole check finds', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1e6 }), fc.constantFrom(1, 4, 18), fc.constantFrom({}, { strokesCounted: 12, sameMusicNotes: 6, openStrings: 'avoided' }), (seed, players, settings) => {
        const random = chance(seed);
        const part = longPart(120, random) as StringPart;
        const seats = seatsFor(players);
        let marks: Mark[] = anyMarks(part, seats, 250, random);
        const standing = standingCheck({ part, seats, settings });
        standing.findings(marks);
        for (let edit = 0; edit < 8; edit += 1) {
          const measures = [1 + random.below(120), 1 + random.below(120)];
          const added = Array.from({ length: 1 + random.below(3) }, () => anyMark(part, seats, random, measures)).filter((mark) => mark !== null);
          const gone = random.happens(0.4) ? random.below(marks.length) : -1;
          const passage = random.happens(0.7) ? anyPassage(part, seats, random, measures[0]!) : [];
          marks = [...marks.filter((_, i) => i !== gone), ...added, ...passage];
          const whole = checkPart({ part, seats, marks, settings });
          expect(standing.findings(marks)).toEqual(whole);
          for (const { rule } of whole) seen.add(rule);
        }
      }),
      { numRuns: Number(process.env.BOWLINE_RUNS ?? 8), seed: 20261125 },
    );
    // Without findings of a rule, its equality would say nothing.
    expect(seen.size).toBeGreaterThan(RULES.length / 2);
  });

  it('takes nothing over when the marks go back to none', () => {
    const random = chance(5);
    const part = longPart(60, random) as StringPart;
    const seats = seatsFor(6);
    const standing = standingCheck({ part, seats, settings: {} });
    const before = standing.findings([]);
    standing.findings(anyMarks(part, seats, 100, random));
    expect(standing.findings([])).toEqual(before);
  });
});
