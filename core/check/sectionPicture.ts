import { sectionPassages, type SectionPassage } from '../bowing/sectionBows.ts';
import { isStringPart } from '../music/part.ts';
import { checkContext } from './context.ts';
import type { CheckInput } from './finding.ts';
import { CheckSettings } from './settings.ts';

/**
 * Who bows when in every staggered passage, from the same reading of the marks as the checker's. Empty for a part that is no bowed string part.
 * Throws on settings of wrong form. Example: `sectionPicture({ part, seats: seatsFor(12), marks, settings: {} })`.
 */
export function sectionPicture({ part, seats, marks, settings }: CheckInput): SectionPassage[] {
  if (!isStringPart(part)) return [];
  const context = checkContext(part, seats, marks, CheckSettings.parse(settings));
  return sectionPassages(context.staggered, context.voices, context.groups, seats, part.measures, context.tempo);
}
