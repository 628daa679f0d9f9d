import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { waitsFor, type Waiting } from '../../../../core/agreement/waiting/waitsFor.ts';
import type { Me, PartView } from '../../../../core/agreement/wire/http.ts';
import type { PartSnapshot } from '../../../agreement/session.ts';
import { tellSeen } from '../../../library/waiting.ts';

export interface WaitsOnStand {
  waits: readonly Waiting[];
  on: boolean;
  turn(): void;
}

/** What waits for me in this part. What I looked through in the list, and what stood there when I left, is told as read. */
export function useWaits(me: Me, { id: part, roles, seen }: PartView, { state, confirmed }: PartSnapshot): WaitsOnStand {
  const [since, setSince] = useState(seen);
  const [on, setOn] = useState(false);
  const waits = useMemo(() => waitsFor(state, { id: me.id, roles }, since), [state, me.id, roles, since]);
  const head = useRef(confirmed.seq);
  useEffect(() => {
    head.current = confirmed.seq;
  });
  useEffect(() => {
    const leave = () => document.visibilityState === 'hidden' && tellSeen(part, head.current);
    document.addEventListener('visibilitychange', leave);
    return () => {
      document.removeEventListener('visibilitychange', leave);
      tellSeen(part, head.current);
    };
  }, [part]);
  const turn = useCallback(() => {
    if (on) {
      setSince(head.current);
      tellSeen(part, head.current);
    }
    setOn(!on);
  }, [on, part]);
  return { waits, on, turn };
}
