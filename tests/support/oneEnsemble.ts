import type { Door } from '../../server/store/door.ts';
import type { Installation } from '../../server/store/installation.ts';
import { openMemory } from '../../server/store/memory.ts';
import { openPostgres } from '../../server/store/postgres.ts';
import type { Store } from '../../server/store/store.ts';
import type { TestDatabase } from './database.ts';

/** An installation seen as the store of one ensemble in it. Closing it closes the installation. */
export interface OneEnsemble extends Store {
  installation: Installation;
  door: Door;
  ensemble: string;
}

/** The first ensemble of an installation; where there is none, one is made. */
export async function oneEnsemble(installation: Installation, name = 'Varnholm Strings'): Promise<OneEnsemble> {
  const [there] = await installation.door.ensembles();
  const { id } = there ?? (await installation.door.addEnsemble(name))!;
  return { ...installation.of(id), installation, door: installation.door, ensemble: id, close: () => installation.close() };
}

export const inMemory = (): Promise<OneEnsemble> => oneEnsemble(openMemory());
export const inPostgres = (database: TestDatabase): Promise<OneEnsemble> => oneEnsemble(openPostgres(database));
