import { z } from 'zod';
import type { Mm, PaperName } from './paper.ts';

/** Clear edge of a sheet. The inner one lies at the fold: left on odd pages, right on even ones. */
export interface Margins {
  inner: Mm;
  outer: Mm;
  top: Mm;
  bottom: Mm;
}

export const MarginsName = z.enum(['narrow', 'usual', 'wide', 'bound']);
export type MarginsName = z.infer<typeof MarginsName>;

const even = (side: Mm, top: Mm, bottom: Mm): Margins => ({ inner: side, outer: side, top, bottom });

/** Chosen, not measured; the small sheet has narrow ones, so that a line holds as much as it can, the large ones leave room for thumbs and pencil. */
const USUAL: Record<PaperName, Margins> = {
  a4: even(12, 11, 12),
  b4: even(18, 14, 16),
  '9x12': even(14, 12, 13),
  '10x13': even(19, 15, 16),
};

/** As near the edge as printers reach and copiers see. Common practice, no source. */
const NARROW = even(10, 10, 11);
/** Three quarters of an inch all round, to write in. Source: MOLA, Guidelines for Music Preparation (2006): an image of 8 x 11 on a sheet of 9.5 x 12.5 inches. */
const WIDE = even(19, 19, 19);
/** What a stapled or taped fold takes of a page. Chosen, not measured. */
const FOLD = 8;

/**
 * Margins by their name. narrow: the most music; usual: as the sheet allows; wide: room to write in; bound: usual, and more at the fold.
 * Example: `marginsOf('a4', 'wide').outer` is 19.
 */
export function marginsOf(paper: PaperName, name: MarginsName): Margins {
  const usual = USUAL[paper];
  switch (name) {
    case 'narrow':
      return NARROW;
    case 'usual':
      return usual;
    case 'wide':
      return WIDE;
    case 'bound':
      return { ...usual, inner: usual.inner + FOLD };
  }
}

/** The margin on the left of a page, from 1. Example: on page 2 it is the outer one. */
export const leftOf = (page: number, { inner, outer }: Margins): Mm => (page % 2 ? inner : outer);
