import { useEffect, useState, useSyncExternalStore } from 'react';
import { seatsOf } from '../../core/agreement/seating.ts';
import { factsOf } from '../../core/agreement/facts.ts';
import type { Me, PartView } from '../../core/agreement/wire/http.ts';
import { systemClock } from '../agreement/clock.ts';
import { newId } from '../agreement/newId.ts';
import { openPart } from '../agreement/partSession.ts';
import type { PartSession, PartSnapshot } from '../agreement/session.ts';
import { fetchAhead } from './kept/ahead.ts';
import { keptJson } from './kept/library.ts';
import { fetchPart, keepOpened, keepRows } from './kept/parts.ts';
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
  facts: factsOf(view.part, seatsOf(view.section)),
  me: { id: me.id, name: me.name, roles: view.roles, seat: view.seat },
});

const nothing = () => () => {};

/** The part with its live agreement: null until both are there. Fetches the part again when it was exchanged. */
export function usePartSession(part: string): { opened: OpenedPart | null; fault: unknown; again(): void } {
  const loaded = useLoaded(part, async () => {
    const [me, view] = await Promise.all([keptJson<Me>('/me'), fetchPart(part)]);
    return { me, view };
  });
  const [session, setSession] = useState<PartSession | null>(null);
  const { value, again, fault } = loaded;
  useEffect(() => {
    if (!value || value.view.id !== part) return;
    setSession((open) => {
      open?.renew(viewOf(value.view, value.me));
      return open ?? openPart({ part, connection: libraryLine(), storage: unsent, clock: systemClock, newId, onRows: (rows) => void keepRows(part, rows), ...viewOf(value.view, value.me) });
    });
  }, [value, part]);
  useEffect(() => {
    if (!value || value.view.id !== part) return;
    let here = true;
    // What could not be fetched ahead is fetched when it is opened.
    void keepOpened(part).then(() => fetchAhead(value.me, value.view, () => here)).catch(() => undefined);
    return () => {
      here = false;
    };
  }, [value, part]);
  useEffect(() => () => setSession((open) => (open?.close(), null)), [part]);
  const snapshot = useSyncExternalStore(session?.subscribe ?? nothing, () => session?.getSnapshot() ?? null);
  const renewed = snapshot?.renewed ?? false;
  useEffect(() => {
    if (renewed) again();
  }, [renewed, again]);
  return { opened: value && session && snapshot ? { me: value.me, view: value.view, session, snapshot } : null, fault, again };
}
