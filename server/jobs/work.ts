import { carriedPlaces } from '../../core/agreement/carried.ts';
import { engravingDocument } from '../../core/musicxml/engravingDocument.ts';
import { guessInstruments } from '../../core/musicxml/guessInstruments.ts';
import { readScore } from '../../core/musicxml/readScore.ts';
import { sharedParts } from '../../core/music/sharedPart.ts';
import { layOver } from '../../core/matching/editions/layOver.ts';
import { markFile, MEDIA_TYPES } from '../files/markFile.ts';
import { openFile } from '../files/openFile.ts';
import { checkPiece } from './checkPiece.ts';
import type { JobName, Jobs } from './requests.ts';

/** The work itself, run inside a worker thread; `onReached` tells how far it has come. */
export const work: { [Name in JobName]: (asked: Jobs[Name]['asked'], onReached?: (step: number) => void) => Promise<Jobs[Name]['answer']> | Jobs[Name]['answer'] } = {
  async importScore({ bytes, fileName }, onReached) {
    onReached?.(0);
    const file = await openFile(bytes, fileName);
    if (!file.ok) return { ok: false, trouble: file.fault };
    onReached?.(1);
    const read = readScore(file.text);
    return read.ok ? { ok: true, score: { ...read.score, parts: sharedParts(guessInstruments(read.parts)) } } : { ok: false, trouble: read.fault };
  },

  realign: ({ part, stored, generation }) => layOver(part, stored, generation),

  carriedPlaces: ({ state, older, newer }) => carriedPlaces(state, older, newer),

  async markDocument({ bytes, fileName, part, ids, marks, form, superseded }) {
    const file = await openFile(bytes, fileName);
    if (!file.ok) return { ok: false, trouble: file.fault };
    const made = await markFile(bytes, file, [{ part, ids, marks }], superseded, form);
    return made.ok ? { ok: true, bytes: made.bytes, mediaType: MEDIA_TYPES[form] } : { ok: false, trouble: made.fault };
  },

  async engravingFor({ bytes, fileName, part, stored }) {
    const file = await openFile(bytes, fileName);
    if (!file.ok) return { ok: false, trouble: file.fault };
    const made = engravingDocument(file.text, part, stored);
    return made.ok ? made : { ok: false, trouble: made.fault };
  },

  checkPiece: ({ parts }, onReached) => checkPiece(parts, (part) => onReached?.(part)),

  // Printing brings the engraver and the page's fonts: no other job waits for those.
  printPart: async (asked) => (await import('../print/printPart.ts')).printPart(asked),
};
