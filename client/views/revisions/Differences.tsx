import { useMemo, type ReactNode } from 'react';
import type { InkChange } from '../../../core/agreement/difference.ts';
import type { MarkInForce } from '../../../core/agreement/inForce.ts';
import type { Part } from '../../../core/music/part.ts';
import { UNITS } from '../../../core/engraving/geometry.ts';
import { useEngraving } from '../../engraving/useEngraving.ts';
import { indexPart } from '../../library/partIndex.ts';
import { words } from '../../words/words.ts';
import { MeasurePair } from './MeasurePair.tsx';
import { snippetsOf } from './snippets.ts';

interface Props {
  part: Part;
  text: string;
  width: number;
  spacing: number;
  changes: readonly InkChange[];
  before: readonly MarkInForce[];
  after: readonly MarkInForce[];
  number(ordinal: number): string;
}

/** The differing measures as engraved, before and after; a line that is not drawn yet comes when it is. */
export function Differences({ part, text, width, spacing, changes, before, after, number }: Props): ReactNode {
  const { engraved } = useEngraving(text, width, spacing);
  const index = useMemo(() => indexPart(part), [part]);
  const snippets = useMemo(() => snippetsOf(changes, engraved.ranges), [changes, engraved.ranges]);
  const shown = [...new Set(snippets.map(({ system }) => system))];
  if (!changes.length) return <p className="none">{words.revisions.none}</p>;
  return (
    <div className="pairs">
      <svg width="0" height="0" className="drawn-once" aria-hidden="true">
        <defs>
          {shown.map((system) => (
            <g key={system} id={`state-line-${system}`} className="sys" transform={`scale(${1 / UNITS})`} dangerouslySetInnerHTML={{ __html: engraved.systems[system]?.drawing?.inner ?? '' }} />
          ))}
        </defs>
      </svg>
      {snippets.map((snippet) => {
        const drawing = engraved.systems[snippet.system]?.drawing;
        return drawing ? <MeasurePair key={snippet.from} snippet={snippet} systemId={`state-line-${snippet.system}`} drawing={drawing} index={index} before={before} after={after} number={number} /> : null;
      })}
    </div>
  );
}
