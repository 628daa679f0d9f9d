import type { ReactNode } from 'react';
import type { Me, Shelf } from '../../../core/agreement/wire/http.ts';
import { EnsembleName } from './Ensembles.tsx';
import { Gone } from './Gone.tsx';
import { NewProgramme, type Act } from './NewProgramme.tsx';
import { People } from './People.tsx';
import { Sections } from './Sections.tsx';

/** What the librarian alone does on the Shelf: programmes, sections, people. */
export function Librarian({ shelf, me, act }: { shelf: Shelf; me: Me; act: Act }): ReactNode {
  return (
    <div className="librarian">
      <NewProgramme act={act} />
      <Sections sections={shelf.sections} people={shelf.people.filter(({ deputy }) => !deputy)} act={act} />
      <People shelf={shelf} me={me.id} act={act} />
      <Gone people={shelf.people.length} act={act} />
      <EnsembleName ensemble={me.ensemble} act={act} />
    </div>
  );
}
