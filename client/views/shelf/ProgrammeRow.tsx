import type { ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { addressOf, go } from '../../router.ts';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import { StageStaff } from '../folder/StageStaff.tsx';

type Programme = Shelf['programmes'][number];

const dates = ({ firstRehearsal, concert }: Programme) =>
  [firstRehearsal && `${words.folder.first} ${words.day(firstRehearsal)}`, concert && `${words.folder.concert} ${words.day(concert)}`].filter(Boolean).join(' · ');

/** One programme on the shelf: its works, and how far each part of them has come; each leads to the stand. `mine`: ids of the sections I sit in. */
export function ProgrammeRow({ programme, mine }: { programme: Programme; mine: readonly string[] }): ReactNode {
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
        <small>{dates(programme)}</small>
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
