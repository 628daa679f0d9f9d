import type { ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { firstDay } from '../../../core/season/days.ts';
import { deadlinesOf } from '../../../core/season/deadlines.ts';
import { nextDue } from '../../../core/season/late.ts';
import { SpectaclesInline } from '../../drawing/Spectacles.tsx';
import { addressOf, go } from '../../router.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
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

/** One programme on the shelf: its works, and how far each part of them has come; each leads to the stand. `mine`: ids of the sections I sit in. */
export function ProgrammeRow({ programme, mine }: { programme: Programme; mine: readonly string[] }): ReactNode {
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
            <PlaceLink key={part.id} to={{ at: 'stand', part: part.id, measure: null }} className={part.section && mine.includes(part.section.id) ? 'mine' : ''} aria-label={words.folder.cell(work.title, part.name, words.stages[part.stage], part.open)}>
              <StageStaff stage={part.stage} label={words.stages[part.stage]} small />
              <small>{part.name}</small>
            </PlaceLink>
          ))}
        </p>
      ))}
    </li>
  );
}
