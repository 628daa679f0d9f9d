import type { ReactNode } from 'react';
import type { PartTally } from '../../../../core/agreement/wire/piece.ts';
import type { Severity } from '../../../../core/check/finding.ts';
import { SpectaclesInline } from '../../../drawing/Spectacles.tsx';
import { Fold } from '../../../ui/Fold.tsx';
import { words } from '../../../words/words.ts';
import { PieceFindings } from './PieceFindings.tsx';

const SEVERITIES: readonly Severity[] = ['cannotPlay', 'collides', 'worthALook'];

/** One part: how much there is to watch in it, and on opening, what. */
export function PartTallyRow({ work, at, tally }: { work: string; at: string; tally: PartTally }): ReactNode {
  const { id, name, counts, rested } = tally;
  const told = SEVERITIES.filter((severity) => counts[severity]);
  const line = (
    <>
      <b>{name}</b>
      {told.map((severity) => (
        <span key={severity} className={severity}>
          <SpectaclesInline /> {words.piece.counts[severity](counts[severity])}
        </span>
      ))}
      {told.length ? null : <span>{words.piece.nothing}</span>}
      {rested ? <span>{words.piece.rested(rested)}</span> : null}
    </>
  );
  if (!told.length && !rested) return <p className="tally">{line}</p>;
  return (
    <Fold of={id} className="tally-fold" word={<span className="tally">{line}</span>}>
      <PieceFindings work={work} part={id} name={name} at={at} />
    </Fold>
  );
}
