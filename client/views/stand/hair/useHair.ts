import { useCallback, useMemo, useState } from 'react';
import type { Part } from '../../../../core/music/part.ts';
import { useAnswer, type AnswerState } from '../../../asking/useAnswer.ts';
import { bower } from '../../../bowing/bower.ts';
import type { HairAnswer, HairQuestion } from '../../../bowing/messages.ts';

export interface HairOnStand {
  on: boolean;
  turn(): void;
  state: AnswerState;
  answer: HairAnswer | null;
}

/** The bow along its hair, for as long as it is shown, or its answer `wanted` for another picture; worked out anew when a mark or the seat shown changes. */
export function useHair(part: Part, rest: HairQuestion, wanted: boolean): HairOnStand {
  const [on, setOn] = useState(false);
  const question = useMemo(() => (on || wanted ? rest : null), [on, wanted, rest]);
  const { state, answer } = useAnswer(part, bower, question);
  const turn = useCallback(() => setOn((before) => !before), []);
  return { on, turn, state, answer };
}
