import { useCallback, useMemo, useState } from 'react';
import type { PartView } from '../../../../core/agreement/wire/http.ts';
import { useAnswer, type AnswerState } from '../../../asking/useAnswer.ts';
import { besider } from '../../../beside/besider.ts';
import type { BesideAnswer, OtherPart } from '../../../beside/messages.ts';
import { troubleText } from '../../../library/http.ts';
import { otherParts } from '../../../library/otherParts.ts';
import { useLoaded } from '../../../library/useLoaded.ts';

export interface BesideOnStand {
  on: boolean;
  turn(): void;
  state: AnswerState;
  /** Why the other parts could not be fetched. */
  trouble: string | null;
  answer: BesideAnswer | null;
  /** The other parts as they stood when they were asked for. */
  others: readonly OtherPart[];
}

const NONE: readonly OtherPart[] = [];

/** How the other sections bow, for as long as it is wanted; fetched anew each time it is asked for. */
export function useBeside(view: PartView): BesideOnStand {
  const [asked, setAsked] = useState(0);
  const on = asked % 2 === 1;
  const turn = useCallback(() => setAsked((before) => before + 1), []);
  const others = useLoaded(on ? `beside ${view.id} ${asked}` : 'nobody', () => (on ? otherParts(view) : Promise.resolve(null)));
  const question = useMemo(() => (on && others.value ? { others: others.value } : null), [on, others.value]);
  const { state, answer } = useAnswer(view.part, besider, question);
  const trouble = on && others.fault ? troubleText(others.fault) : null;
  return { on, turn, state: on && !question && !trouble ? 'working' : state, trouble, answer, others: others.value ?? NONE };
}
