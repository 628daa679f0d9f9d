import type { ReactNode } from 'react';
import { go } from '../../router.ts';
import { words } from '../../words/words.ts';
import type { Cell, Cells } from './cells.ts';
import { StageStaff } from './StageStaff.tsx';

function PartCell({ cell, chosen, onChoose }: { cell: Cell; chosen: boolean; onChoose(id: string): void }): ReactNode {
  const { work, part } = cell;
  const stage = words.stages[part.stage];
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
      <span>{[part.open ? words.folder.open(part.open) : '', part.locked ? words.folder.locked : ''].filter(Boolean).join(' · ') || '\u00a0'}</span>
    </button>
  );
}

/** How far every part of the programme has come. Roles are said: on a narrow page the cells stand below their work, and stay a table. A first touch chooses a part, a second lays it on the stand. */
export function Grid({ cells, chosen, onChoose }: { cells: Cells; chosen: string | null; onChoose(id: string): void }): ReactNode {
  return (
    <div className="grid-scroll">
      <table className="works" role="table">
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
                    <PartCell key={cell.part.id} cell={cell} chosen={cell.part.id === chosen} onChoose={onChoose} />
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
