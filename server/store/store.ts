import type { Archive } from './archive.ts';
import type { Attention } from './attention.ts';
import type { Errata } from './errata.ts';
import type { Library } from './library.ts';
import type { PartLog } from './partLog.ts';
import type { People } from './people.ts';
import type { Sections } from './sections.ts';

/** Everything that is kept. Two stores keep it: memory.ts and postgres.ts, held to one suite of tests. */
export interface Store {
  people: People;
  sections: Sections;
  library: Library;
  log: PartLog;
  attention: Attention;
  archive: Archive;
  errata: Errata;
  /** Throws when the store cannot be reached now. */
  ping(): Promise<void>;
  close(): Promise<void>;
}
