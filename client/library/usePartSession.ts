import { useEffect, useState, useSyncExternalStore } from 'react';
import { factsOf } from '../../core/agreement/facts.ts';
import type { Me, PartView } from '../../core/agreement/wire/http.ts';
import { systemClock } from '../agreement/clock.ts';
import { newId } from '../agreement/newId.ts';
import { openPart } from '../agreement/partSession.ts';
import type { PartSession, PartSnapshot } from '../agreement/session.ts';
import { getJson } from './http.ts';
import { libraryLine, unsent } from './line.ts';
import { useLoaded } from './useLoaded.ts';

export interface OpenedPart {
  me: Me;
  view: PartView;
  session: PartSession;
  snapshot: PartSnapshot;
}

const viewOf = (view: PartView, me: Me) => ({
  state: view.state,
  facts: factsOf(view.part, view.section?.seats.map(({ seat }) => seat) ?? []),
  me: { id: me.id, name: me.name, roles: view.roles, seat: view.seat },
});

const nothing = () => () => {};

/** The part with its live agreement: null until both are there. Fetches the part again when it was exchanged. */
export function usePartSession(part: string): { opened: OpenedPart | null; fault: unknown; again(): void } {
  const loaded = useLoaded(part, async () => {
    const [me, view] = await Promise.all([getJson<Me>('/me'), getJson<PartView>(`/parts/${part}`)]);
    return { me, view };
  });
  const [session, setSession] = useState<PartSession | null>(null);
  const { value, again, fault } = loaded;
  useEffect(() => {
    if (!value || value.view.id !== part) return;
    setSession((open) => {
      open?.renew(viewOf(value.view, value.me));
      return open ?? openPart({ part, connection: libraryLine(), storage: unsent, clock: systemClock, newId, ...viewOf(value.view, value.me) });
    });
  }, [value, part]);
  useEffect(() => () => setSession((open) => (open?.close(), null)), [part]);
  const snapshot = useSyncExternalStore(session?.subscribe ?? nothing, () => session?.getSnapshot() ?? null);
  const renewed = snapshot?.renewed ?? false;
  useEffect(() => {
    if (renewed) again();
  }, [renewed, again]);
  return { opened: value && session && snapshot ? { me: value.me, view: value.view, session, snapshot } : null, fault, again };
}
