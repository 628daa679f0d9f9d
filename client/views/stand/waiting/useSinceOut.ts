import { useEffect, useMemo, useRef } from 'react';
import { changedMeasures, sinceHandedOut, type LateChange } from '../../../../core/agreement/sinceHandedOut.ts';
import type { AgreementState, PartFacts } from '../../../../core/agreement/state.ts';
import type { PartView } from '../../../../core/agreement/wire/http.ts';
import { isFor } from '../../../../core/music/seat.ts';
import { numberOf } from '../../../../core/music/printedNumber.ts';
import { words } from '../../../words/words.ts';

/** What has changed on my part since it was handed out, on anybody's where I have no seat; said once, when the part is opened. `say` stays the same from drawing to drawing. */
export function useSinceOut({ seat, part }: PartView, state: AgreementState, facts: PartFacts, caughtUp: boolean, say: (sentence: string) => void): readonly LateChange[] {
  const { ink, handedOut } = state;
  const changes = useMemo(() => {
    const all = sinceHandedOut(state, facts);
    return seat === null ? all : all.filter(({ seats }) => isFor(seats, seat));
    // Nothing else of the state bears on it, and the state is a new one with every vote.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [ink, handedOut, facts, seat]);
  const opened = useRef(false);
  useEffect(() => {
    if (!caughtUp || opened.current) return;
    opened.current = true;
    const measures = changedMeasures(changes, seat).map((ordinal) => numberOf(part.measures[ordinal - 1]!));
    if (measures.length) say(words.season.onStand(measures));
  }, [caughtUp, changes, seat, part, say]);
  return changes;
}
