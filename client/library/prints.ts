import type { CopyMarks, Reader } from '../../core/print/copy.ts';
import type { Fingerings } from '../../core/print/fingerings.ts';
import type { MarginsName } from '../../core/print/margins.ts';
import type { PaperName } from '../../core/print/paper.ts';
import { send } from './http.ts';

export const FORMS = ['pdf', 'musicxml', 'mxl', 'mei', 'svg'] as const;

export interface PrintsAsked {
  copies: { part: string; for: Reader[] }[];
  form: (typeof FORMS)[number];
  marks: CopyMarks;
  paper: PaperName;
  margins: MarginsName;
  /** Millimetres. */
  staff: number;
  fingerings: Fingerings;
}

/** Copies of parts of one work as a zip, piece by piece as they are made. */
export async function fetchPrints(work: string, asked: PrintsAsked, signal: AbortSignal, onChunk: (chunk: Uint8Array) => void): Promise<{ name: string; file: Blob }> {
  const response = await send(`/works/${work}/prints`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(asked), signal });
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  const reader = response.body!.getReader();
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    chunks.push(next.value);
    onChunk(next.value);
  }
  const name = /filename\*=UTF-8''([^;]+)/.exec(response.headers.get('content-disposition') ?? '')?.[1];
  return { name: name ? decodeURIComponent(name) : 'parts.zip', file: new Blob(chunks, { type: 'application/zip' }) };
}
