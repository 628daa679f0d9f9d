import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rareStep, rareSteps } from '../../../core/fingering/rare.ts';

const shares = fc.integer({ min: 1, max: 5 }).chain((width) => fc.record({ width: fc.constant(width), likely: fc.array(fc.array(fc.double({ min: 1e-6, max: 1, noNaN: true }), { minLength: width, maxLength: width }), { minLength: 1, maxLength: 5 }) }));

describe('a step that hardly any professional makes', () => {
  it('costs nothing where it is a tenth as common as the commonest from the same place, and ln 9 at a ninetieth', () => {
    const rare = rareSteps(Float64Array.of(0.9, 0.09, 0.01, 0.2, 0.2, 0.2), 3);
    expect([...rare].map((cost) => cost.toFixed(6))).toEqual(['0.000000', '0.000000', Math.log(9).toFixed(6), '0.000000', '0.000000', '0.000000']);
  });

  it('never forbids: what none of them makes costs 20', () => {
    expect([...rareSteps(Float64Array.of(1, 0), 2)]).toEqual([0, 20]);
    expect([...rareSteps(Float64Array.of(0, 0), 2)]).toEqual([0, 0]);
  });

  it('is the same one by one', () => {
    fc.assert(fc.property(shares, ({ width, likely }) => {
      const flat = Float64Array.from(likely.flat());
      expect(Array.from(flat, (_, step) => rareStep(flat, width, step))).toEqual([...rareSteps(flat, width)]);
    }));
  });
});
