import { createTestDatabase } from './database.ts';
import { openHouse, type House } from './house.ts';
import { inPostgres } from './oneEnsemble.ts';
import { layOut, type LaidOut } from './laidOut.ts';

/** A server over a database of its own, with a section and a part laid out in it. */
export interface LaidHouse {
  house: House;
  laid: LaidOut;
  close(): Promise<void>;
}

export async function openLaidHouse(): Promise<LaidHouse> {
  const database = await createTestDatabase();
  const store = await inPostgres(database);
  const laid = await layOut(store);
  const house = await openHouse(store);
  return {
    house,
    laid,
    async close() {
      await house.close();
      await store.close();
      await database.drop();
    },
  };
}
