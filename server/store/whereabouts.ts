/** What an address names by an id. */
export const KINDS = ['part', 'work', 'programme', 'section', 'set', 'erratum', 'import'] as const;
export type Kind = (typeof KINDS)[number];

/** A thing of the library by its id. */
export interface Thing {
  kind: Kind;
  id: string;
}

/** Where a thing is within its ensemble. */
export interface Whereabouts {
  /** The programme it belongs to; null where it belongs to none. */
  programme: string | null;
}
