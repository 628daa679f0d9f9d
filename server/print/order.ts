import type { Mark } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';
import type { SeatId } from '../../core/music/seat.ts';
import type { Mm, PaperName } from '../../core/print/paper.ts';

/** Which figures of the left hand are printed. */
export type Fingerings = 'all' | 'sparse' | 'none';

/** What stands in the heading and at the foot of a part. */
export interface Heading {
  title: string;
  composer: string;
  /** The part, as players call it. */
  instrument: string;
  /** "Desk 3, inside"; empty for the whole section. */
  seat: string;
  /** "Edition of 3 March 2027"; empty where it is not known. */
  edition: string;
}

export interface PrintOrder {
  bytes: Uint8Array;
  fileName: string;
  /** Id of the part in the source. */
  part: string;
  stored: Part;
  /** Marks this copy shows, each with the seats it is for; on a copy for one seat all are for all. */
  marks: readonly (Mark & { seats: 'all' | SeatId[] })[];
  heading: Heading;
  paper: PaperName;
  staff: Mm;
  fingerings: Fingerings;
  form: 'pdf' | 'svg' | 'mei';
  /** When it was made, as ISO text. */
  at: string;
}
