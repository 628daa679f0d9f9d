import { useState, type ReactNode } from 'react';
import type { PieceFinding } from '../../../../core/agreement/wire/piece.ts';
import { seatWords } from '../../../../core/music/markWords.ts';
import { lensOf } from '../../../drawing/lensOf.ts';
import { SpectaclesInline } from '../../../drawing/Spectacles.tsx';
import { troubleText } from '../../../library/http.ts';
import { pieceFindings } from '../../../library/pieces.ts';
import { useLoaded } from '../../../library/useLoaded.ts';
import { PlaceLink } from '../../../ui/PlaceLink.tsx';
import { capital } from '../../../words/capital.ts';
import { words } from '../../../words/words.ts';

/** Shown at once; the worst come first. Chosen, not measured. */
const AT_ONCE = 30;

function One({ part, finding }: { part: string; finding: PieceFinding }): ReactNode {
  const { rule, text, severity, measure, where, seats, rested } = finding;
  return (
    <li data-finding={rule} className={rested ? 'rested' : undefined}>
      <p className="said">
        <SpectaclesInline dark={lensOf(seats)} /> {text}
      </p>
      <p>
        <span>{[capital(seatWords(seats, words.marks)), words.rules.severities[severity]].join(' · ')}</span>
        <PlaceLink to={{ at: 'stand', part, measure }}>{words.piece.onStand(where)}</PlaceLink>
        <PlaceLink to={{ at: 'rules', rule }}>{words.rules.why}</PlaceLink>
      </p>
      {rested ? <p>{words.piece.restedBy(rested.by, rested.reason)}</p> : null}
    </li>
  );
}

/** What there is to watch in one part, worst first, and after it what is put to rest. `at`: when it was looked through. */
export function PieceFindings({ work, part, name, at }: { work: string; part: string; name: string; at: string }): ReactNode {
  const { value, fault } = useLoaded(`findings ${part} ${at}`, () => pieceFindings(work, part));
  const [shown, setShown] = useState(AT_ONCE);
  if (!value) return <p role="status">{fault ? troubleText(fault) : words.piece.comes}</p>;
  const inOrder = [...value.filter(({ rested }) => !rested), ...value.filter(({ rested }) => rested)];
  const left = inOrder.length - shown;
  return (
    <>
      <ol aria-label={words.piece.list(name)}>
        {inOrder.slice(0, shown).map((finding, i) => (
          <One key={i} part={part} finding={finding} />
        ))}
      </ol>
      {left > 0 ? (
        <button type="button" onClick={() => setShown(shown + AT_ONCE)}>
          {words.piece.more(Math.min(left, AT_ONCE))}
        </button>
      ) : null}
    </>
  );
}
