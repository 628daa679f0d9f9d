import type { ReactNode } from 'react';
import type { Shelf } from '../../../core/agreement/wire/http.ts';
import { getJson, troubleText } from '../../library/http.ts';
import { useLoaded } from '../../library/useLoaded.ts';
import { addressOf, type Place } from '../../router.ts';
import { Ledge } from '../../ui/Ledge.tsx';

export function ShelfPlace({ place }: { place: Place }): ReactNode {
  const { value, fault } = useLoaded('shelf', () => getJson<Shelf>('/shelf'));
  return (
    <>
      <main className="pages">
        {value?.programmes.map((programme) => (
          <section key={programme.id}>
            <h2>{programme.title}</h2>
            {programme.works.flatMap((work) => work.parts.map((part) => (
              <p key={part.id}><a href={addressOf({ at: 'stand', part: part.id, measure: null })}>{work.title}: {part.name}</a></p>
            )))}
          </section>
        ))}
      </main>
      <Ledge here={place} sentence={fault ? troubleText(fault) : 'The shelf.'} />
    </>
  );
}
