import type { Archive } from './archive.ts';
import type { Attention } from './attention.ts';
import type { Errata } from './errata.ts';
import type { Jobs } from './jobs.ts';
import type { Library } from './library.ts';
import type { PartLog } from './partLog.ts';
import type { People } from './people.ts';
import type { Sections } from './sections.ts';
import type { Trail } from './trail.ts';
import type { Thing, Whereabouts } from './whereabouts.ts';

/** Everything that one ensemble keeps. */
export interface Store {
  people: People;
  sections: Sections;
  library: Library;
  log: PartLog;
  attention: Attention;
  archive: Archive;
  errata: Errata;
  trail: Trail;
  /** Long work asked for. */
  jobs: Jobs;
  /** Where a thing of this ensemble is; null when it has no such thing. */
  find(thing: Thing): Promise<Whereabouts | null>;
  /** Gives back what it holds ready; it can be used again. */
  close(): Promise<void>;
}
