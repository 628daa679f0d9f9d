import type { ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { NewProgramme, type Act } from './NewProgramme.tsx';
import { People } from './People.tsx';
import { Sections } from './Sections.tsx';

/** What the librarian alone does on the Shelf: programmes, sections, people. */
export function Librarian({ shelf, act }: { shelf: Shelf; act: Act }): ReactNode {
  return (
    <div className="librarian">
      <NewProgramme act={act} />
      <Sections sections={shelf.sections} people={shelf.people} act={act} />
      <People people={shelf.people} act={act} />
    </div>
  );
}
