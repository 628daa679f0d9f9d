import { useCallback, useMemo, useState } from 'react';
import type { Part } from '../../../../core/music/part.ts';
import { useAnswer, type AnswerState } from '../../../asking/useAnswer.ts';
import { besider } from '../../../beside/besider.ts';
import type { BesideAnswer, OtherPart } from '../../../beside/messages.ts';
import { troubleText } from '../../../library/http.ts';
import type { Loaded } from '../../../library/useLoaded.ts';

export interface BesideOnStand {
  on: boolean;
  turn(): void;
  state: AnswerState;
  /** Why the other parts could not be fetched. */
  trouble: string | null;
  answer: BesideAnswer | null;
  /** The other parts as they stand now. */
  others: readonly OtherPart[];
}

const NONE: readonly OtherPart[] = [];

/** How the other sections bow, for as long as it is wanted; worked out anew whenever one of them is marked otherwise. */
export function useBeside(part: Part, others: Loaded<readonly OtherPart[]>): BesideOnStand {
  const { value, fault, again } = others;
  const [on, setOn] = useState(false);
  const turn = useCallback(() => {
    if (!on && fault) again();
    setOn(!on);
  }, [on, fault, again]);
  const question = useMemo(() => (on && value ? { others: value } : null), [on, value]);
  const { state, answer } = useAnswer(part, besider, question);
  const trouble = on && fault ? troubleText(fault) : null;
  return { on, turn, state: on && !question && !trouble ? 'working' : state, trouble, answer, others: value ?? NONE };
}
