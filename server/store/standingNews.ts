import type { Standing } from './door.ts';
import type { News } from './trail.ts';

export const standingWord = ({ librarian, deputy }: Standing): string => (librarian ? 'librarian' : deputy ? 'deputy' : 'member');

/** What the trail is told of a standing that changed. */
export function newsOfStanding(before: Standing, after: Standing): News[] {
  const role: News[] = before.librarian === after.librarian ? [] : [{ kind: after.librarian ? 'roleGiven' : 'roleTaken', facts: { role: 'librarian' } }];
  const place: News[] = before.deputy === after.deputy ? [] : [{ kind: after.deputy ? 'becameDeputy' : 'becameMember' }];
  return [...role, ...place];
}
