import type { FastifyRequest } from 'fastify';
import { trouble } from './trouble.ts';

export const LARGEST_UPLOAD = 60 * 1024 * 1024;

/** The one file of a form, whole; a larger one is refused while it arrives. */
export async function uploaded(request: FastifyRequest, largest = LARGEST_UPLOAD): Promise<{ bytes: Uint8Array; fileName: string }> {
  if (!request.isMultipart()) throw trouble(400, 'NO_FILE', 'No file arrived. Choose a MusicXML file (.musicxml, .xml or .mxl) and send it again.');
  const file = await request.file({ limits: { fileSize: largest } });
  if (!file) throw trouble(400, 'NO_FILE', 'No file arrived. Choose a MusicXML file (.musicxml, .xml or .mxl) and send it again.');
  const bytes = await file.toBuffer();
  return { bytes, fileName: file.filename.replace(/[\p{Cc}\p{Cs}/\\]/gu, ' ').trim().slice(-200) || 'score' };
}
