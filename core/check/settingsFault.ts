import { instrumentNamed } from '../instruments/instrumentNamed.ts';
import type { InstrumentName } from '../music/part.ts';
import { CheckSettings } from './settings.ts';

/**
 * What is wrong with a section's settings, in a sentence, or null when the checker can go by them. Keys the checker does not know are left to others.
 * Example: `{ assumedTempo: 'fast' }` is "assumedTempo: Invalid input: expected number, received string."
 */
export function settingsFault(settings: unknown, instrument: InstrumentName): string | null {
  const parsed = CheckSettings.safeParse(settings);
  if (!parsed.success) {
    const { path, message } = parsed.error.issues[0]!;
    return `${path.length ? `${path.join('.')}: ` : ''}${message}.`;
  }
  const { lowestString } = parsed.data;
  const third = instrumentNamed(instrument).openStrings[2];
  if (lowestString !== null && lowestString >= third) return `lowestString: the lowest string of a ${instrument} lies below its string III, so below ${third}.`;
  return null;
}
