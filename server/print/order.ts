import type { Mark } from '../../core/music/mark.ts';
import type { Part } from '../../core/music/part.ts';
import type { SeatId } from '../../core/music/seat.ts';
import type { Fingerings } from '../../core/print/fingerings.ts';
import type { MarginsName } from '../../core/print/margins.ts';
import type { Mm, PaperName } from '../../core/print/paper.ts';
import type { TurnKind } from '../../core/print/turns.ts';

export type PrintForm = 'pdf' | 'svg' | 'mei';

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
  margins: MarginsName;
  staff: Mm;
  fingerings: Fingerings;
  form: PrintForm;
  /** When it was made, as ISO text. */
  at: string;
}

export interface PageTurn {
  /** Page that is turned, and the printed number of its last measure. */
  page: number;
  measure: string;
  /** Silence around it in seconds. */
  seconds: number;
  kind: TurnKind;
}

export interface Printed {
  ok: true;
  pages: number;
  turns: PageTurn[];
  warnings: string[];
  /** One file; of SVG one a page. */
  files: { bytes: Uint8Array; mediaType: string }[];
}
