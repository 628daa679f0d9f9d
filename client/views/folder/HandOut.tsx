import type { ReactNode } from 'react';
import type { Me, SectionView } from '../../../core/agreement/wire/http.ts';
import { erasuresAddress } from '../../library/archive.ts';
import { assignPart, changesAddress, exportAddress, sourceAddress } from '../../library/shelf.ts';
import { Choice } from '../../ui/Choice.tsx';
import { PlaceLink } from '../../ui/PlaceLink.tsx';
import { words } from '../../words/words.ts';
import type { Act } from '../shelf/NewProgramme.tsx';
import type { Cell } from './cells.ts';

function Forms({ part, reader, label }: { part: string; reader: string; label: string }): ReactNode {
  return (
    <div>
      <dt>{label}</dt>
      <dd>
        {(['musicxml', 'mxl'] as const).map((form) => (
          <a key={form} href={exportAddress(part, reader, form)} download aria-label={`${label}, .${form}`}>
            .{form}
          </a>
        ))}
      </dd>
    </div>
  );
}

/** What can be handed out of the part in hand: marked for all, for each seat, the changes, and the file as it came. */
export function HandOut({ me, leads: mayExport, cell, sections, act }: { me: Me; leads: boolean; cell: Cell; sections: readonly SectionView[]; act: Act }): ReactNode {
  const { part, work } = cell;
  const section = sections.find(({ id }) => id === part.section?.id);
  const desks = [{ value: '', word: words.folder.none }, ...sections.map(({ id, name }) => ({ value: id, word: name }))];
  return (
    <section className="hand-out" aria-labelledby="hand-out">
      <h2 id="hand-out">{words.folder.handOut(part.name, work.title)}</h2>
      {me.librarian ? (
        <p className="assign">
          <Choice label={words.folder.toSection} options={desks} value={part.section?.id ?? ''} onChoose={(chosen) => void act(async () => void (await assignPart(part.id, chosen || null)))} />
        </p>
      ) : null}
      <dl>
        {mayExport ? <Forms part={part.id} reader="section" label={words.folder.forSection} /> : null}
        {mayExport ? section?.seats.map(({ seat, person }) => <Forms key={seat} part={part.id} reader={seat} label={words.folder.forSeat(words.seat.one(seat), person?.name ?? null)} />) : null}
        {mayExport ? (
          <div>
            <dt>{words.folder.changes}</dt>
            <dd>
              <a href={changesAddress(part.id, 'csv')} download aria-label={`${words.folder.changes}, .csv`}>
                .csv
              </a>
              <a href={changesAddress(part.id, 'text')} download aria-label={`${words.folder.changes}, ${words.folder.text}`}>
                {words.folder.text}
              </a>
            </dd>
          </div>
        ) : null}
        <div>
          <dt>{words.reuse.earlier}</dt>
          <dd>
            <PlaceLink to={{ at: 'revisions', part: part.id, between: null }}>{part.name}</PlaceLink>
          </dd>
        </div>
        {mayExport ? (
          <div>
            <dt>{words.reuse.erase}</dt>
            <dd>
              <a href={erasuresAddress(part.id)} download aria-label={`${words.reuse.erase}, .csv`}>
                .csv
              </a>
            </dd>
          </div>
        ) : null}
        <div>
          <dt>{words.folder.original}</dt>
          <dd>
            <a href={sourceAddress(part.id)} download>
              <span className="offstage">{words.folder.original}: </span>
              {work.fileName}
            </a>
          </dd>
        </div>
      </dl>
    </section>
  );
}
