import type { Trouble } from '../../core/agreement/wire/http.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { Part, Score } from '../../core/music/part.ts';

interface Source {
  bytes: Uint8Array;
  fileName: string;
  /** Id of the part in the source. */
  part: string;
}

/** Long work on documents, off the main thread: server/jobs/documents.ts. */
export interface Documents {
  importScore(bytes: Uint8Array, fileName: string): Promise<{ ok: true; score: Score } | { ok: false; trouble: Trouble }>;
  /** Carries over the note ids of the part as it is stored. */
  realign(part: Part, stored: Part): Promise<{ part: Part; kept: number; added: number; removed: number }>;
  markDocument(order: Source & { ids: Part; marks: Mark[]; form: 'musicxml' | 'mxl'; superseded: 'keep' | 'hide' }): Promise<{ ok: true; bytes: Uint8Array; mediaType: string } | { ok: false; trouble: Trouble }>;
  engravingFor(order: Source & { stored: Part }): Promise<{ ok: true; text: string } | { ok: false; trouble: Trouble }>;
}
