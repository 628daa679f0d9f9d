import { useEffect } from 'react';
import { rememberFolder } from '../ui/remembered.ts';
import { keptJson } from './kept/library.ts';
import type { Shelf } from '../../core/agreement/wire/http.ts';

/** Finds the programme a work lies in, so that the ledge leads back to its folder even when one came straight to the part. */
export function useFolderOf(work: string | null): void {
  useEffect(() => {
    if (work === null) return;
    keptJson<Shelf>('/shelf').then(
      ({ programmes }) => {
        const found = programmes.find(({ works }) => works.some(({ id }) => id === work));
        if (found) rememberFolder(found.id);
      },
      () => {},
    );
  }, [work]);
}
