import { CheckSettings } from '../../../core/check/settings.ts';
import type { SectionSettings } from '../../../core/agreement/wire/http.ts';

/** The numbers a section settles on its own page; all others it has stay as they are. */
export type Settled = Pick<CheckSettings, 'openStrings' | 'bowSeconds' | 'togetherShare'>;
const SETTLED = ['openStrings', 'bowSeconds', 'togetherShare'] as const;

/** Level lost when so many change at once: half a decibel for an eighth of the players, one for a quarter. */
export const SHARES = { strict: 1 / 8, ordinary: 1 / 4 } as const;

export function settledOf(settings: SectionSettings): Settled {
  const { openStrings, bowSeconds, togetherShare } = CheckSettings.parse(settings);
  return { openStrings, bowSeconds, togetherShare };
}

export const withSettled = (settings: SectionSettings, settled: Settled): SectionSettings => ({ ...settings, ...settled });

/** The usual numbers are those nobody wrote down, so that they follow when the usual ones are mended. */
export const withoutSettled = (settings: SectionSettings): SectionSettings => Object.fromEntries(Object.entries(settings).filter(([key]) => !(SETTLED as readonly string[]).includes(key)));

export const isUsual = (settings: SectionSettings): boolean => SETTLED.every((key) => !(key in settings));
