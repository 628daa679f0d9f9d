import type { Role } from '../../core/agreement/people.ts';

/** Roles for one part: in its section (`principal` null where the person has no place in it), and the library's. */
export function rolesOf(librarian: boolean, principal: boolean | null): Role[] {
  const inSection: Role[] = principal === null ? [] : [principal ? 'principal' : 'player'];
  return librarian ? [...inSection, 'librarian'] : inSection;
}
