import type { ReactNode } from 'react';
import type { WorkView } from '../../../../core/agreement/wire/http.ts';
import type { PieceProgress as Progress } from '../../../../core/agreement/wire/piece.ts';
import { troubleText } from '../../../library/http.ts';
import { lookThroughPiece, stopLooking } from '../../../library/pieces.ts';
import { words } from '../../../words/words.ts';
import { PartTallyRow } from './PartTallyRow.tsx';
import { PieceProgress } from './PieceProgress.tsx';
import { pieceSentence } from './pieceSentence.ts';
import { usePieceCheck } from './usePieceCheck.ts';

function Running({ running, onStop, onJoin }: { running: Progress; onStop(): void; onJoin(): void }): ReactNode {
  return (
    <div className="running">
      <PieceProgress {...running} />
      {running.mine ? null : <p>{words.piece.elsewhere}</p>}
      <button type="button" onClick={running.mine ? onStop : onJoin}>
        {running.mine ? words.piece.stop : words.piece.join}
      </button>
    </div>
  );
}

/** A look through the whole work: asked for, watched while it goes on, stopped, and what it found part by part. */
export function WholePiece({ work, say }: { work: WorkView; say(sentence: string | null): void }): ReactNode {
  const { check, fault, again } = usePieceCheck(work.id);
  const act = (sentence: string | null, done: Promise<unknown>) =>
    done.then(
      () => (say(sentence), again()),
      (reason: unknown) => say(troubleText(reason)),
    );
  const look = () => void act(null, lookThroughPiece(work.id));
  const stop = () => void act(words.piece.stopped, stopLooking(work.id));
  const { running, found } = check ?? { running: null, found: null };
  const sentence = check && pieceSentence(check);
  return (
    <section className="whole-piece" aria-labelledby="whole-piece">
      <h2 id="whole-piece">{words.piece.title(work.title)}</h2>
      <div className="asking">
        <p role="status">{fault ? troubleText(fault) : (sentence ?? words.piece.what)}</p>
        {running ? (
          <Running running={running} onStop={stop} onJoin={look} />
        ) : (
          <button type="button" onClick={look}>
            {found ? words.piece.again : words.piece.look}
          </button>
        )}
      </div>
      {found ? (
        <>
          <p className={found.before.length ? 'before' : 'when'} role={found.before.length ? 'status' : undefined}>
            {words.piece.at(found.at)} {found.before.length ? words.piece.before(found.before) : null}
          </p>
          {found.parts.map((tally) => (
            <PartTallyRow key={tally.id} work={work.id} at={found.at} tally={tally} />
          ))}
        </>
      ) : null}
    </section>
  );
}
