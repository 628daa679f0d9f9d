import type { ReactNode } from 'react';
import type { ProgrammeOverview } from '../../../core/agreement/wire/overview.ts';
import { SpectaclesInline } from '../../drawing/Spectacles.tsx';
import { words } from '../../words/words.ts';
import type { Cell, Cells } from './cells.ts';
import { turnSentence, when } from './late.ts';

interface Props {
  cells: Cells;
  overview: ProgrammeOverview;
  onChoose(part: string): void;
}

type Row = { cell: Cell; due: NonNullable<ProgrammeOverview['parts'][number]['due']>; turn: string };

/** What is late, worst first, and what is due next, each with whose turn it is; a line leads to its part in the folder. */
export function LateList({ cells, overview, onChoose }: Props): ReactNode {
  const all = cells.rows.flatMap(({ parts }) => parts.flat());
  const rows = overview.parts.flatMap(({ id, due, waitedFor }): Row[] => {
    const cell = all.find(({ part }) => part.id === id);
    return cell && due ? [{ cell, due, turn: turnSentence(waitedFor) }] : [];
  });
  rows.sort((a, b) => a.due.days - b.due.days);
  const empty = cells.columns.filter((section) => section && section.seats.every(({ person }) => person === null));
  if (rows.length + empty.length === 0) return null;
  const late = rows.filter(({ due }) => due.days < 0);
  const next = rows.filter(({ due }) => due.days >= 0);
  const list = (title: string, shown: Row[]) => (
    <>
      <h2>{title}</h2>
      <ul>
        {shown.map(({ cell: { work, part }, due, turn }) => (
          <li key={part.id}>
            <button type="button" onClick={() => onChoose(part.id)}>
              {due.days < 0 ? <SpectaclesInline /> : null} {words.season.partDue(work.title, part.name, words.stages[due.stage], words.day(due.date), when(due.days))} <span>{turn}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
  return (
    <section className="rows due" aria-label={words.season.late}>
      {late.length ? list(words.season.late, late) : rows.length ? <p>{words.season.nothingLate}</p> : null}
      {next.length ? list(words.season.next, next) : null}
      {empty.map((section) => (
        <p key={section!.id}>{words.season.noSeats(section!.name)}</p>
      ))}
    </section>
  );
}
