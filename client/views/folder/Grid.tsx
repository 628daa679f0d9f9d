import type { CSSProperties, ReactNode } from 'react';
import type { ProgrammeOverview } from '../../../core/agreement/wire/overview.ts';
import { SpectaclesInline } from '../../drawing/Spectacles.tsx';
import { go } from '../../router.ts';
import { words } from '../../words/words.ts';
import type { Cell, Cells } from './cells.ts';
import { shortTurn, when } from './late.ts';
import { StageStaff } from './StageStaff.tsx';

type Progress = ProgrammeOverview['parts'][number];

/** How a part stands against its day, under its stage: late with the spectacles, else when it is due, and whose turn it is. */
function Standing({ progress }: { progress: Progress }): ReactNode {
  const { due, waitedFor, changed } = progress;
  const turn = shortTurn(waitedFor);
  return (
    <>
      {due ? (
        <span className={due.days < 0 ? 'late' : ''}>
          {due.days < 0 ? <SpectaclesInline /> : null} {when(due.days)}
        </span>
      ) : null}
      {turn ? <span>{turn}</span> : null}
      {changed ? <span className="late">{words.season.changedSince(changed)}</span> : null}
    </>
  );
}

function PartCell({ cell, progress, chosen, onChoose }: { cell: Cell; progress: Progress | undefined; chosen: boolean; onChoose(id: string): void }): ReactNode {
  const { work, part } = cell;
  const stage = words.stages[part.stage];
  const state = [part.open ? words.folder.open(part.open) : '', part.locked ? words.folder.locked : ''].filter(Boolean).join(' · ');
  return (
    <button
      type="button" className="part-cell" data-part={part.id} data-stage={part.stage} aria-pressed={chosen}
      onClick={() => (chosen ? go({ at: 'stand', part: part.id, measure: null }) : onChoose(part.id))}
    >
      <span className="offstage">{words.folder.of(work.title, part.name)}</span>
      <span aria-hidden="true">
        <StageStaff stage={part.stage} label={stage} />
      </span>
      <em aria-hidden="true">{part.name}</em>
      <b>{stage}</b>
      {state ? <span>{state}</span> : null}
      {progress ? <Standing progress={progress} /> : null}
    </button>
  );
}

/** How far every part of the programme has come. Roles are said: on a narrow page the cells stand below their work, and stay a table. A first touch chooses a part, a second lays it on the stand. */
export function Grid({ cells, overview, chosen, onChoose }: { cells: Cells; overview: ProgrammeOverview | null; chosen: string | null; onChoose(id: string): void }): ReactNode {
  return (
    <div className="grid-scroll">
      <table className="works" role="table" style={{ '--columns': cells.columns.length } as CSSProperties}>
        <thead role="rowgroup">
          <tr role="row">
            <td />
            {cells.columns.map((section) => (
              <th key={section?.id ?? 'none'} scope="col" role="columnheader">
                {section?.name ?? words.folder.noSection}
                {section ? <small>{words.folder.players(section.seats.filter(({ person }) => person).length, Math.ceil(section.seats.length / 2))}</small> : null}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">
          {cells.rows.map(({ work, parts }) => (
            <tr key={work.id} role="row">
              <th scope="row" role="rowheader">
                <i>{work.title}</i>
                <small>{[work.composer, words.folder.measures(Math.max(0, ...work.parts.map(({ measures }) => measures)))].filter(Boolean).join(', ')}</small>
                <small>{work.fileName}</small>
              </th>
              {parts.map((here, i) => (
                <td key={i} role="cell" className={here.some(({ part }) => part.id === chosen) ? 'chosen' : ''}>
                  {here.map((cell) => (
                    <PartCell key={cell.part.id} cell={cell} progress={overview?.parts.find(({ id }) => id === cell.part.id)} chosen={cell.part.id === chosen} onChoose={onChoose} />
                  ))}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
