import { useCallback, useEffect, useMemo, useState } from 'react';
import type { Aim } from '../../core/fingering/aims.ts';
import type { Part } from '../../core/music/part.ts';
import { fingerer } from './fingerer.ts';
import type { Offers, Question } from './messages.ts';
import { sidesAfter, type Side, type Sides } from './sides.ts';

/** What was asked, by its first and last note, and under which measure the answer hangs. */
export interface Asked {
  from: string;
  to: string;
  measure: number;
}

export interface OffersOnStand {
  asked: Asked | null;
  aim: Aim;
  found: Offers | null;
  /** Index of the one in focus. */
  chosen: number;
  state: 'resting' | 'working' | 'found' | 'failed';
  ask(asked: Asked): void;
  setAim(aim: Aim): void;
  choose(chosen: number): void;
  /** The two laid side by side. */
  sides: Sides | null;
  /** Lays the one in focus above or below the staff. */
  lay(side: Side): void;
  apart(): void;
  leave(): void;
}

type Answer = { asked: Asked; found: Offers | null; failed: boolean };

/** Fingerings for a passage of the part on the stand: asked for, worked out beside the page, laid aside when the question changes. `rest`: all of the question but passage and aim. */
export function useOffers(part: Part, rest: Omit<Question, 'from' | 'to' | 'aim'>): OffersOnStand {
  const [asked, setAsked] = useState<Asked | null>(null);
  const [aim, setAim] = useState<Aim>('usual');
  const [answer, setAnswer] = useState<Answer | null>(null);
  const [chosen, choose] = useState(0);
  const [sides, setSides] = useState<Sides | null>(null);
  const engine = useMemo(() => fingerer(part), [part]);
  useEffect(() => () => engine.close(), [engine]);

  useEffect(() => {
    if (!asked) return;
    let current = true;
    engine.ask({ from: asked.from, to: asked.to, aim, ...rest }).then(
      (found) => current && found && (choose(0), setSides(null), setAnswer({ asked, found, failed: false })),
      () => current && setAnswer({ asked, found: null, failed: true }),
    );
    return () => {
      current = false;
      setAnswer(null);
    };
  }, [engine, asked, aim, rest]);

  const most = answer?.found?.offers.length ?? 0;
  const lay = useCallback((side: Side) => setSides((before) => sidesAfter(before, side, chosen, most)), [chosen, most]);
  const apart = useCallback(() => setSides(null), []);
  const leave = useCallback(() => setAsked(null), []);
  const here = answer?.asked === asked ? answer : null;
  const state = !asked ? 'resting' : !here ? 'working' : here.failed ? 'failed' : 'found';
  return { asked, aim, found: here?.found ?? null, chosen, sides: here ? sides : null, state, ask: setAsked, setAim, choose, lay, apart, leave };
}
