import { createAuthority } from '../../../../server/operations/authority.ts';
import { openPostgres } from '../../../../server/store/postgres.ts';
import { oneEnsemble } from '../../../support/oneEnsemble.ts';
import { answering, heldBytes } from '../child.ts';
import type { Ways } from '../installation.ts';

export interface LoadedAsked {
  ways: Ways;
  parts: string[];
}

/** What one process holds for parts it keeps ready to be written to. */
answering<LoadedAsked>(async ({ ways, parts }) => {
  const store = await oneEnsemble(openPostgres(ways));
  const authority = createAuthority(store);
  // The first brings what every other needs too.
  await authority.current(parts[0]!);
  const before = await heldBytes();
  for (const part of parts.slice(1)) await authority.current(part);
  const after = await heldBytes();
  await store.close();
  return { bytes: (after - before) / (parts.length - 1), idle: authority.idle() };
});
