import type { ProgrammeView, WorkView } from '../../core/agreement/wire/http.ts';
import type { ProgrammeBody } from '../../core/agreement/wire/programme.ts';
import type { Part } from '../../core/music/part.ts';

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
  head: number;
}

export interface Library {
  addProgramme(programme: ProgrammeBody): Promise<ProgrammeView>;
  /** False when there is no such programme. */
  setProgramme(id: string, programme: ProgrammeBody): Promise<boolean>;
  programme(id: string): Promise<ProgrammeView | null>;
  programmes(): Promise<ProgrammeView[]>;
  /** All or nothing, further files of the same work too. null when there is no such programme. */
  addWork(programme: string, heading: { title: string; composer: string }, edition: NewEdition, parts: NewPart[], further?: readonly NewFile[]): Promise<WorkView | null>;
  /** Further parts of a work, all or nothing. null when there is no such work. */
  addFiles(work: string, files: readonly NewFile[]): Promise<WorkView | null>;
  /** Lays a corrected edition over a work, all or nothing: new music for parts that are there (by the library's id), and parts that are new. */
  addEdition(work: string, edition: NewEdition, changed: { id: string; content: Part }[], added: NewPart[]): Promise<WorkView>;
  work(id: string): Promise<WorkView | null>;
  part(id: string): Promise<StoredPart | null>;
  partsOf(work: string): Promise<StoredPart[]>;
  /** The document as it was uploaded. */
  source(edition: string): Promise<{ bytes: Uint8Array; fileName: string } | null>;
  /** Puts a part on the stands of a section; it is for their instrument then. */
  assign(part: string, section: string | null): Promise<boolean>;
}
