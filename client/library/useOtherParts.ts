import { useEffect, useState } from 'react';
import type { PartView } from '../../core/agreement/wire/http.ts';
import { systemClock } from '../agreement/clock.ts';
import { readAlong } from '../agreement/readAlong.ts';
import type { OtherPart } from '../beside/messages.ts';
import { libraryLine } from './line.ts';
import { asItStands, fetchOthers } from './otherParts.ts';
import { useLoaded, type Loaded } from './useLoaded.ts';

/** The other string parts of the work of a part, and what stands in them from moment to moment: a section that inks a mark elsewhere is seen here. */
export function useOtherParts(view: PartView): Loaded<readonly OtherPart[]> {
  const { value: views, fault, again } = useLoaded(`others ${view.id}`, () => fetchOthers(view));
  const [others, setOthers] = useState<readonly OtherPart[] | null>(null);
  useEffect(() => {
    setOthers(views?.map((other) => asItStands(other, other.state)) ?? null);
    const ends = views?.map((other) => {
      let { ink } = other.state;
      return readAlong({
        part: other.id, connection: libraryLine(), clock: systemClock, state: other.state, onRenewed: again,
        onState(state) {
          // Slips and talk change nothing of what stands.
          if (state.ink === ink) return;
          ink = state.ink;
          setOthers((all) => all?.map((one) => (one.id === other.id ? asItStands(other, state) : one)) ?? null);
        },
      });
    });
    return () => ends?.forEach((end) => end());
  }, [views, again]);
  return { value: others, fault, again };
}
