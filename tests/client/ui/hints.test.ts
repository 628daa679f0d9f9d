import { expect, it } from 'vitest';
import { nextHint } from '../../../client/ui/hints.ts';

it('one hint is given at a time, in order, and none that is known', () => {
  expect(nextHint(['note', 'open', 'fingerings'], [])).toBe('note');
  expect(nextHint(['note', 'open', 'fingerings'], ['note', 'fingerings'])).toBe('open');
  expect(nextHint(['note'], ['note', 'open'])).toBeNull();
});
