import { describe, expect, it } from 'vitest';
import { settingsFault } from '../../../core/check/settingsFault.ts';
import { isUsual, settledOf, SHARES, withoutSettled, withSettled } from '../../../client/views/section/settledNumbers.ts';

const OWN = { openStrings: 'avoided', bowSeconds: { pp: 10, p: 8, mp: 6, mf: 5, f: 3.5, ff: 2 }, togetherShare: SHARES.ordinary } as const;

describe('what a section settles on its page', () => {
  it('is the usual where nothing is written down: open strings free, one player in eight', () => {
    expect(settledOf({})).toMatchObject({ openStrings: 'free', togetherShare: SHARES.strict, bowSeconds: { pp: 12, ff: 2.5 } });
    expect(isUsual({})).toBe(true);
  });

  it('comes back as it was kept, takes nothing away that others wrote, and the checker can go by it', () => {
    const kept = withSettled({ shiftScore: 9, stagger: 0.5 }, OWN);
    expect(settledOf(kept)).toEqual(OWN);
    expect(kept).toMatchObject({ shiftScore: 9, stagger: 0.5 });
    expect(settingsFault(kept, 'violin')).toBeNull();
    expect(isUsual(kept)).toBe(false);
  });

  it('goes back to the usual by being forgotten, the rest staying', () => {
    expect(withoutSettled(withSettled({ shiftScore: 9 }, OWN))).toEqual({ shiftScore: 9 });
    expect(isUsual({ shiftScore: 9 })).toBe(true);
  });
});
