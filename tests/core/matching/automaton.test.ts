import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Automaton } from '../../../core/matching/automaton.ts';

const row = fc.array(fc.integer({ min: 0, max: 2 }), { maxLength: 25 });

describe('the longest stretch that stands in a row', () => {
  it('is the one found by looking everywhere, with its first place, while the row grows', () => {
    fc.assert(
      fc.property(row, row, (text, asked) => {
        const automaton = new Automaton();
        text.forEach((symbol, size) => {
          automaton.add(symbol);
          const written = text.slice(0, size + 1).join('');
          const length = asked.findLastIndex((_, i) => written.includes(asked.slice(0, i + 1).join(''))) + 1;
          const found = automaton.longest(asked, 0);
          expect(found.length).toBe(length);
          if (length) expect(found.first).toBe(written.indexOf(asked.slice(0, length).join('')));
        });
      }),
      { numRuns: 200 },
    );
  });
});
