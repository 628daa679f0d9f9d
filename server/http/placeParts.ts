import type { SectionView } from '../../core/agreement/wire/http.ts';
import type { Part } from '../../core/music/part.ts';

const FIRST = /\b(i|1|1st|1mo|1er|1re|first|prim([oaie]|us|um)|erste[rns]?|premi(er|[eè]re)s?|[ou]no)(?![\p{L}\d])/iu;
const SECOND = /\b(ii|2|2nd|2do|2de|2e|second([oaie]|us|um|[oa]s)?s?|zweite[rns]?|deuxi[eè]mes?)(?![\p{L}\d])/iu;
/** Above the section, or a player of their own. */
const ALONE = /\b(solo|solist[aein]*|soli|principale?|concert(ato|ante|ino|ant)|konzertierend|obbligato)\b/i;

/** 1 or 2 where a name says which of two like sections it is. Example: "Violino secondo" is 2. */
function numberIn(name: string): number | null {
  const words = name.normalize('NFC').replace(/([a-z])(\d)/gi, '$1 $2').replace(/\./g, ' ');
  return SECOND.test(words) ? 2 : FIRST.test(words) ? 1 : null;
}

/** The section each part goes to when a score is laid on the shelf: same instrument, same number; null where that is not certain. A soloist beside the section is not of it. */
export function placeParts(parts: readonly Part[], sections: readonly SectionView[]): (string | null)[] {
  return parts.map((part) => {
    const like = sections.filter((section) => section.instrument === part.instrument);
    const alike = parts.filter((other) => other.instrument === part.instrument);
    if (ALONE.test(part.name) && alike.length > 1) return null;
    const number = numberIn(part.name) ?? (alike.length > 1 && alike.length === like.length ? alike.indexOf(part) + 1 : null);
    const fits = like.filter((section) => number === null || (numberIn(section.name) ?? number) === number);
    return fits.length === 1 ? fits[0]!.id : null;
  });
}
