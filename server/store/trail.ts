import type { DoorKind, TrailFacts, TrailKind, TrailRow } from '../../core/agreement/wire/trail.ts';

interface Named {
  id: string;
  name: string;
}

/** Who does something, by the name they have now; null: the library itself. */
export type By = Named | null;

/** Something to be told in an ensemble's trail. */
export interface News {
  kind: TrailKind;
  about?: Named | null;
  section?: string | null;
  part?: string | null;
  /** Of things, never of people. */
  facts?: TrailFacts;
}

/** Something that happened at the door. */
export interface DoorNews {
  kind: DoorKind;
  /** Who did it where it was not the person: a librarian who made a link. */
  by?: By;
  facts?: TrailFacts;
}

export interface TrailAsking {
  /** Rows that this person did or that are about them. */
  person?: string | undefined;
  kind?: TrailKind | undefined;
  /** The last row of the page before. */
  before?: string | undefined;
  limit: number;
  /** Rows of these sections and about these people alone; null: all of the ensemble's. */
  within: { sections: readonly string[]; people: readonly string[] } | null;
}

/**
 * What was done in an ensemble. What the store itself does is told by it, in the transaction that does it: nothing is done untold, nothing is told that was
 * not done. `tell` is for what is not the store's, such as a print that was handed out.
 */
export interface Trail {
  tell(news: News, by: By): Promise<void>;
  /** The last ones first. */
  rows(asking: TrailAsking): Promise<TrailRow[]>;
}
