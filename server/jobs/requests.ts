import type { CarriedPlace } from '../../core/agreement/carried.ts';
import type { AgreementState } from '../../core/agreement/state.ts';
import type { Trouble } from '../../core/agreement/wire/http.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { Part, Score } from '../../core/music/part.ts';
import type { LaidOver } from '../../core/matching/editions/layOver.ts';
import type { PrintOrder, Printed } from '../print/order.ts';
import type { PieceAnswer } from './checkPiece.ts';

export type Refused = { ok: false; trouble: Trouble };

interface Source {
  bytes: Uint8Array;
  fileName: string;
  /** Id of the part in the source. */
  part: string;
}

export interface MarkOrder extends Source {
  /** The part as it is stored: its note ids are the ones the marks use. */
  ids: Part;
  marks: readonly Mark[];
  form: 'musicxml' | 'mxl';
  superseded: 'keep' | 'hide';
}

export interface EngravingOrder extends Source {
  stored: Part;
}

/** What a worker can be asked for, and what it answers. */
export interface Jobs {
  importScore: { asked: { bytes: Uint8Array; fileName: string }; answer: { ok: true; score: Score } | Refused };
  realign: { asked: { part: Part; stored: Part; generation: number }; answer: LaidOver };
  carriedPlaces: { asked: { state: AgreementState; older: Part; newer: Part }; answer: CarriedPlace[] };
  markDocument: { asked: MarkOrder; answer: { ok: true; bytes: Uint8Array; mediaType: string } | Refused };
  engravingFor: { asked: EngravingOrder; answer: { ok: true; text: string } | Refused };
  /** Parts as `packed` makes them. */
  checkPiece: { asked: { parts: readonly Uint8Array[] }; answer: PieceAnswer[] };
  printPart: { asked: PrintOrder; answer: Printed | Refused };
}

export type JobName = keyof Jobs;

/** What comes back from a worker: how far it has come, any number of times, and then its outcome. */
export type FromWorker = { reached: number } | Outcome;
export type Outcome = { done: unknown } | { failed: string };
