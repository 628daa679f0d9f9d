import type { FastifyRequest } from 'fastify';
import type { Jobs, Upload } from '../store/jobs.ts';
import { trouble } from './trouble.ts';

export const LARGEST_UPLOAD = 60 * 1024 * 1024;
/** Files of one work that are sent together, and what they may weigh. Chosen, not measured. */
export const MOST_FILES = 60;
const LARGEST_TOGETHER = 5 * LARGEST_UPLOAD;

const NO_FILE = () => trouble(400, 'NO_FILE', 'No file arrived. Choose a MusicXML file (.musicxml, .xml or .mxl) and send it again.');

/** What reads forms has no code for one that is torn, only words. */
function tornForm(reason: unknown): unknown {
  const torn = reason instanceof Error && !('code' in reason) && /multipart|boundary|part header/i.test(reason.message);
  return torn ? trouble(400, 'TORN_FORM', 'Nothing was changed: the file did not arrive whole. Look at your connection and send it again.') : reason;
}

/** The files of a form, kept piece by piece until their turn comes; a larger one is refused while it arrives, and then none is kept. */
export async function uploadedFiles(request: FastifyRequest, jobs: Jobs): Promise<Upload[]> {
  if (!request.isMultipart()) throw NO_FILE();
  const files: Upload[] = [];
  let bytes = 0;
  try {
    for await (const part of request.files()) {
      files.push(await jobs.keepUpload(part.filename.replace(/[\p{Cc}\p{Cs}/\\]/gu, ' ').trim().slice(-200) || 'score', part.file));
      bytes += part.file.bytesRead;
      if (part.file.truncated) throw trouble(413, 'TOO_LARGE', 'The file is larger than 60 MB, more than the library takes. Save it as compressed MusicXML (.mxl) and send it again.');
      if (bytes > LARGEST_TOGETHER) throw trouble(413, 'TOO_LARGE', 'That is more than the library takes at once. Send it in smaller pieces.');
    }
    if (files.length === 0) throw NO_FILE();
    return files;
  } catch (reason) {
    await jobs.dropUploads(files);
    throw tornForm(reason);
  }
}

/** The one file of a form, whole; a larger one is refused while it arrives. */
export async function uploaded(request: FastifyRequest, largest = LARGEST_UPLOAD): Promise<{ bytes: Uint8Array; fileName: string }> {
  if (!request.isMultipart()) throw NO_FILE();
  const torn = (reason: unknown): never => {
    throw tornForm(reason);
  };
  const file = await request.file({ limits: { fileSize: largest } }).catch(torn);
  if (!file) throw NO_FILE();
  const bytes = await file.toBuffer().catch(torn);
  return { bytes, fileName: file.filename.replace(/[\p{Cc}\p{Cs}/\\]/gu, ' ').trim().slice(-200) || 'score' };
}
