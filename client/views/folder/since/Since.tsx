import type { ReactNode } from 'react';
import { createPortal } from 'react-dom';
import type { SectionView } from '../../../../core/agreement/wire/http.ts';
import { fetchSince } from '../../../library/shelf.ts';
import { useLoaded } from '../../../library/useLoaded.ts';
import { words } from '../../../words/words.ts';
import { usePaper } from '../../stand/paper/usePaper.ts';
import type { Cell } from '../cells.ts';
import { Changes } from './Changes.tsx';
import { DeskSlips } from './DeskSlips.tsx';

/** What has changed in the part in hand since it went onto the stands, and a slip of it for each desk. */
export function Since({ cell, section }: { cell: Cell; section: SectionView | null }): ReactNode {
  const { value } = useLoaded(`since ${cell.part.id} ${cell.part.head}`, () => fetchSince(cell.part.id));
  const paper = usePaper();
  const { season } = words;
  if (!value?.at) return null;
  return (
    <section className="rows since">
      <h2>{season.since}</h2>
      <p>
        {season.wentOut(words.day(value.at))} {value.changes.length ? null : season.noneSince}
      </p>
      {value.changes.length ? (
        <>
          <Changes changes={value.changes} />
          <button type="button" onClick={paper.lay}>
            {season.slips}
          </button>
        </>
      ) : null}
      {paper.on ? createPortal(<DeskSlips cell={cell} section={section} changes={value.changes} onLaid={paper.print} />, document.body) : null}
    </section>
  );
}
