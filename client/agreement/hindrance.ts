import type { Held, HeldBy } from '../../core/agreement/wire/socket.ts';

/**
 * What keeps lines from the log just now. cut: not yet known why. silent: nobody answers. late: sent, and no word yet. gone: the part is not
 * open to me any more. another: this browser is signed in as somebody else. oldProgram: the page must be loaded again.
 */
export type Hindrance = 'cut' | 'offline' | 'silent' | 'late' | 'slower' | 'shelvesAway' | 'shelvesFull' | 'signedOut' | 'gone' | 'another' | 'oldProgram';

const HELD_BY: Record<HeldBy, Hindrance> = { SHELVES_AWAY: 'shelvesAway', SHELVES_FULL: 'shelvesFull', TOO_FAST: 'slower', SIGNED_OUT: 'signedOut' };

/** Example: an answer `{ retry: true, by: 'SHELVES_FULL', .. }` is 'shelvesFull'; one of an older server, which does not say by what, is 'late'. */
export const heldBy = ({ by }: Held): Hindrance => (by && HELD_BY[by]) ?? 'late';
