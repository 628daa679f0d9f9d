import type { ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { firstDay } from '../../../core/season/days.ts';
import { deadlinesOf } from '../../../core/season/deadlines.ts';
import { nextDue } from '../../../core/season/late.ts';
import { SpectaclesInline } from '../../drawing/Spectacles.tsx';
import { addressOf, go } from '../../router.ts';
import { words } from '../../words/words.ts';
import { StageStaff } from '../folder/StageStaff.tsx';

type Programme = Shelf['programmes'][number];

function about({ season, conductor, days }: Programme): string {
  const [first, concert] = [firstDay(days, 'rehearsal'), firstDay(days, 'concert')];
  return [season, conductor, first && `${words.folder.first} ${words.day(first)}`, concert && `${words.folder.concert} ${words.day(concert)}`].filter(Boolean).join(' · ');
}

/** How many of its parts have not come as far as they should have by today. */
function lateParts({ works, days, deadlines }: Programme): number {
  const [by, today] = [deadlinesOf(days, deadlines), new Date().toISOString().slice(0, 10)];
  return works.flatMap(({ parts }) => parts).filter(({ stage }) => (nextDue(stage, by, today)?.days ?? 0) < 0).length;
}

/** One programme on the shelf: its works, and how far each part of them has come. */
export function ProgrammeRow({ programme }: { programme: Programme }): ReactNode {
  const late = lateParts(programme);
  const target = { at: 'folder', programme: programme.id } as const;
  return (
    <li data-programme={programme.id}>
      <h2>
        <a
          href={addressOf(target)}
          onClick={(event) => {
            if (event.metaKey || event.ctrlKey) return;
            event.preventDefault();
            go(target);
          }}
        >
          {programme.title}
        </a>
        <small>{about(programme)}</small>
        {late ? (
          <small className="late">
            <SpectaclesInline /> {words.season.lateParts(late)}
          </small>
        ) : null}
      </h2>
      {programme.works.length === 0 ? <p className="quiet">{words.shelf.noWorks}</p> : null}
      {programme.works.map((work) => (
        <p key={work.id} className="work">
          <i>{work.title}</i>
          {work.parts.map((part) => (
            <span key={part.id} title={words.folder.cell(work.title, part.name, words.stages[part.stage], part.open)}>
              <StageStaff stage={part.stage} label={words.folder.cell(work.title, part.name, words.stages[part.stage], part.open)} small />
              <small>{part.name}</small>
            </span>
          ))}
        </p>
      ))}
    </li>
  );
}
