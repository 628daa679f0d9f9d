import { useEffect, useMemo, useRef, type FormEvent, type KeyboardEvent, type ReactNode } from 'react';
import type { Figure } from '../../../../core/matching/figure.ts';
import { Tick } from '../../../ui/Tick.tsx';
import { capital } from '../../../words/capital.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { measureName } from '../sentence.ts';
import { copyFor } from './copyFor.ts';
import { layElsewhere, modelOf } from './layElsewhere.ts';

/** Where else the figure in hand is played: each place in words, to be left out or kept; Enter lays the marks in all that are kept. */
export function ElsewhereView({ desk }: { desk: Desk }): ReactNode {
  const { found, turn, leave } = desk.elsewhere;
  const list = useRef<HTMLFormElement>(null);
  useEffect(() => list.current?.querySelector<HTMLElement>('[role=checkbox]')?.focus(), []);
  const { view, inForce, pencil, seats } = desk;
  const places = found?.places;
  const copies = useMemo(() => {
    const model = modelOf({ view, inForce, pencil, seats });
    return places?.map((figure) => copyFor(model, figure)) ?? [];
  }, [places, view, inForce, pencil, seats]);
  if (!found) return null;
  const where = ({ run }: Figure) => words.inMeasures(measureName(desk, run.b.from), measureName(desk, run.b.to));
  const kept = found.places.length - found.out.size;
  const onSubmit = (event: FormEvent) => {
    event.preventDefault();
    layElsewhere(desk);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    leave();
  };
  return (
    <form className="elsewhere" aria-label={words.elsewhere.title} onSubmit={onSubmit} onKeyDown={onKeyDown} ref={list}>
      <h3>{words.elsewhere.title}</h3>
      <ul>
        {found.places.map((figure, i) => (
          <li key={`${figure.run.b.line} ${figure.run.b.first}`}>
            <Tick checked={!found.out.has(i)} onTurn={() => turn(i)}>
              <span>
                <b>{capital(where(figure))}</b>, {words.elsewhere.likeness(figure.likeness, figure.by)}
                {copies[i]?.behind ? `; ${words.elsewhere.stays(copies[i].behind)}` : ''}
                {copies[i] && !copies[i].marks.length ? `; ${words.elsewhere.stands}` : ''}
              </span>
            </Tick>
          </li>
        ))}
      </ul>
      <div className="acts">
        <button type="submit">
          {words.elsewhere.lay(kept)} <kbd aria-hidden="true">{words.keys.caps.Enter}</kbd>
        </button>
        <button type="button" onClick={leave}>
          {words.line.leave} <kbd aria-hidden="true">Esc</kbd>
        </button>
      </div>
    </form>
  );
}
