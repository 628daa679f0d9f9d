import { useCallback, useEffect, useMemo, useReducer, useRef } from 'react';
import type { Part } from '../../../../core/music/part.ts';
import type { Offers } from '../../../fingering/messages.ts';
import { hearer } from '../../../hearing/hearer.ts';
import { loudspeaker } from '../../../hearing/loudspeaker.ts';
import type { HearQuestion } from '../../../hearing/messages.ts';
import { hearingReducer, startHearing, type Hearing, type What } from '../../../hearing/reducer.ts';
import { words } from '../../../words/words.ts';
import { showSounding } from '../pointed.ts';

export interface HearingOnStand extends Hearing {
  hear(what: What): void;
  stop(): void;
  turnLoop(): void;
  turnClick(): void;
  setPace(pace: number): void;
}

type Rest = Pick<HearQuestion, 'marks' | 'seats' | 'seat' | 'settings'>;

/** Hearing a passage of the part on the stand: prepared beside the page, played, stopped when the fingerings under it change. `rest`: what stands, and whose part it is read on. */
export function useHearing(part: Part, rest: Rest, offers: Offers | null, say: (sentence: string) => void): HearingOnStand {
  const [hearing, dispatch] = useReducer(hearingReducer, startHearing);
  const engine = useMemo(() => hearer(part), [part]);
  const speaker = useMemo(loudspeaker, []);
  useEffect(() => () => engine.close(), [engine]);
  useEffect(() => () => speaker.close(), [speaker]);
  const latest = useRef({ rest, offers, loop: hearing.loop });
  useEffect(() => {
    latest.current = { rest, offers, loop: hearing.loop };
  });
  useEffect(() => dispatch({ type: 'left' }), [offers]);
  useEffect(() => speaker.setLoop(hearing.loop), [speaker, hearing.loop]);

  const { state, what, pace, click } = hearing;
  useEffect(() => {
    if (state === 'playing') return;
    speaker.stop();
    showSounding(null);
  }, [state, speaker]);
  useEffect(() => {
    if (state !== 'rendering' || !what) return;
    let current = true;
    const { rest: standing, offers: found } = latest.current;
    const fingering = what.offer === null ? null : (found?.offers[what.offer]?.fingering ?? null);
    engine.ask({ ...standing, from: what.from, to: what.to, who: what.who, fingering, pace: pace / 100, click }).then(
      (heard) => {
        if (!current || !heard) return;
        speaker.play(heard, latest.current.loop, { onNote: showSounding, onEnd: () => dispatch({ type: 'ended' }) });
        dispatch({ type: 'rendered' });
      },
    ).catch(() => {
      if (!current) return;
      dispatch({ type: 'failed' });
      say(words.hearing.failed);
    });
    return () => {
      current = false;
      engine.drop();
    };
  }, [engine, speaker, state, what, pace, click, say]);

  const hear = useCallback((heard: What) => {
    speaker.wake();
    dispatch({ type: 'hear', what: heard });
  }, [speaker]);
  const stop = useCallback(() => dispatch({ type: 'stop' }), []);
  const turnLoop = useCallback(() => dispatch({ type: 'loop' }), []);
  const turnClick = useCallback(() => dispatch({ type: 'click' }), []);
  const setPace = useCallback((percent: number) => dispatch({ type: 'pace', pace: percent }), []);
  return { ...hearing, hear, stop, turnLoop, turnClick, setPace };
}
