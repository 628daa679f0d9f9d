import { useState, type FormEvent, type ReactNode } from 'react';
import { fetchHand, forgetHand, keepHand } from '../../library/hand.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { Tick } from '../../ui/Tick.tsx';
import { words } from '../../words/words.ts';
import type { Act } from './NewProgramme.tsx';

/** My own hand, for me alone: how far it reaches beside the usual one, and whether the fourth finger is short. */
export function MyHand({ act }: { act: Act }): ReactNode {
  const { value: hand, again } = useLoaded('hand', fetchHand);
  const [moved, setMoved] = useState<number | null>(null);
  const percent = moved ?? Math.round((hand?.factor ?? 1) * 100);
  const onSubmit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const shortFourth = new FormData(event.currentTarget).get('short') === 'on';
    void act(async () => {
      await keepHand({ factor: percent / 100, shortFourth });
      again();
      return words.hand.kept;
    });
  };
  const forget = () =>
    void act(async () => {
      await forgetHand();
      setMoved(null);
      again();
      return words.hand.forgotten;
    });
  return (
    <section className="rows my-hand">
      <h2>{words.hand.title}</h2>
      <p>{words.hand.what}</p>
      <form onSubmit={onSubmit} key={hand ? `${hand.factor} ${hand.shortFourth}` : 'none'}>
        <label>
          <span>{words.hand.reach(percent)}</span>
          <input type="range" min={80} max={110} step={1} value={percent} onChange={(event) => setMoved(Number(event.target.value))} />
        </label>
        <Tick name="short" first={hand?.shortFourth ?? false}>
          {words.hand.shortFourth}
        </Tick>
        <button type="submit">{words.hand.keep}</button>
        {hand ? (
          <button type="button" onClick={forget}>
            {words.hand.forget}
          </button>
        ) : null}
      </form>
      <p className="caution">{words.hand.caution}</p>
    </section>
  );
}
