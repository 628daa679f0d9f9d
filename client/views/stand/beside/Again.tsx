import type { ReactNode } from 'react';
import type { Run } from '../../../../core/matching/run.ts';
import { capital } from '../../../words/capital.ts';
import { words } from '../../../words/words.ts';
import type { Desk } from '../desk.ts';
import { measureName } from '../sentence.ts';
import { turnedRun } from './cutRun.ts';
import { takeBowing } from './takeBowing.ts';

/** Where else in this part the wanted notes' music is played, each with its bowing to be taken. */
export function Again({ desk, again, wanted }: { desk: Desk; again: readonly Run[]; wanted: readonly string[] }): ReactNode {
  const here = [...again, ...again.map(turnedRun)].filter(({ notes }) => notes.some(([, note]) => wanted.includes(note)));
  if (!here.length) return null;
  const where = ({ from, to }: Run['a']) => words.inMeasures(measureName(desk, from), measureName(desk, to));
  const model = { part: desk.view.part, marks: desk.inForce, seats: desk.seats };
  return (
    <article aria-label={words.beside.again}>
      <h4>{words.beside.again}</h4>
      {here.map((run) => (
        <p key={`${run.a.first} ${run.b.first} ${run.likeness}`}>
          {capital(where(run.b))}: {words.beside.as[run.likeness](where(run.a))}{' '}
          <button type="button" onClick={() => takeBowing(desk, model, [run], wanted, where(run.a))}>
            {words.beside.take}
          </button>
        </p>
      ))}
    </article>
  );
}
