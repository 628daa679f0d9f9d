import type { ProgrammeView, Settled, WorkView } from '../../core/agreement/wire/http.ts';
import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { Part } from '../../core/music/part.ts';
import type { Ending } from './jobs.ts';
import type { By } from './trail.ts';

export interface NewEdition {
  bytes: Uint8Array;
  fileName: string;
  by: string;
  at: Date;
}

export interface NewPart {
  content: Part;
  section: string | null;
}

/** A document and the parts that come from it. */
export interface NewFile {
  edition: NewEdition;
  parts: NewPart[];
}

/** A stored part with its music; `content.id` is its id in the source, `id` the library's. */
export interface StoredPart {
  id: string;
  work: { id: string; title: string; composer: string };
  edition: string;
  section: string | null;
  content: Part;
  /** Rises with every corrected edition. */
  revision: number;
  /** Rises when a name was taken out of its log. */
  rewritten: number;
  head: number;
}

export interface RenewedPart {
  id: string;
  content: Part;
  /** Ordinal that each measure has now; null where none has moved. */
  measures: number[] | null;
}

export interface EarlierEdition {
  revision: number;
  edition: string;
  fileName: string;
  settled: Record<string, Settled>;
}

/** What is done is told in the trail: by `by`, or by whoever brought the edition. */
export interface Library {
  addProgramme(programme: ProgrammeBody, by?: By): Promise<ProgrammeView>;
  /** False when there is no such programme. */
  setProgramme(id: string, programme: ProgrammeBody, by?: By): Promise<boolean>;
  programme(id: string): Promise<ProgrammeView | null>;
  programmes(): Promise<ProgrammeView[]>;
  /** All or nothing, further files of the same work too. null when there is no such programme. `ending`: the job it is done for ends in the same transaction, told the work's id. */
  addWork(programme: string, heading: { title: string; composer: string }, edition: NewEdition, parts: NewPart[], further?: readonly NewFile[], ending?: Ending<string>): Promise<WorkView | null>;
  /** Further parts of a work, all or nothing. null when there is no such work. */
  addFiles(work: string, files: readonly NewFile[], ending?: Ending<string>): Promise<WorkView | null>;
  /**
   * Lays a corrected edition over a work, all or nothing: new music for parts that are there (by the library's id), and parts that are new. The music that
   * was there is kept; where measures moved, a row in the part's log says so.
   */
  addEdition(work: string, edition: NewEdition, changed: RenewedPart[], added: NewPart[], ending?: Ending<string>): Promise<WorkView>;
  /** The editions the part had before, the last one first. */
  earlier(part: string): Promise<EarlierEdition[]>;
  /** The music of one of them. */
  earlierMusic(part: string, revision: number): Promise<Part | null>;
  /** Says what became of a mark that did not go along, or (null) that it is open again. False where there is no such music. */
  settle(part: string, revision: number, key: string, settled: Settled | null): Promise<boolean>;
  work(id: string): Promise<WorkView | null>;
  part(id: string): Promise<StoredPart | null>;
  partsOf(work: string): Promise<StoredPart[]>;
  /** The document as it was uploaded. */
  source(edition: string): Promise<{ bytes: Uint8Array; fileName: string } | null>;
  /** Puts a part on the stands of a section; it is for their instrument then. */
  assign(part: string, section: string | null, by?: By): Promise<boolean>;
}
