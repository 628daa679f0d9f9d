import { engravingDocument } from '../../core/musicxml/engravingDocument.ts';
import { mergeMarks } from '../../core/musicxml/mergeMarks.ts';
import { readScore } from '../../core/musicxml/readScore.ts';
import { realign } from '../../core/music/realign.ts';
import { encode, expressible } from '../files/encoding.ts';
import { openFile } from '../files/openFile.ts';
import { packMxl } from '../files/writeFile.ts';
import type { JobName, Jobs } from './requests.ts';

const XML_TYPE = 'application/vnd.recordare.musicxml+xml';
const MXL_TYPE = 'application/vnd.recordare.musicxml';

/** The work itself, run inside a worker thread. */
export const work: { [Name in JobName]: (asked: Jobs[Name]['asked']) => Promise<Jobs[Name]['answer']> | Jobs[Name]['answer'] } = {
  async importScore({ bytes, fileName }) {
    const file = await openFile(bytes, fileName);
    if (!file.ok) return { ok: false, trouble: file.fault };
    const read = readScore(file.text);
    return read.ok ? { ok: true, score: read.score } : { ok: false, trouble: read.fault };
  },

  realign: ({ part, stored }) => realign(part, stored),

  async markDocument({ bytes, fileName, part, ids, marks, form, superseded }) {
    const file = await openFile(bytes, fileName);
    if (!file.ok) return { ok: false, trouble: file.fault };
    const merged = mergeMarks(file.text, { parts: [{ part, ids, marks }], superseded, expressible: expressible(file.encoding) });
    if (!merged.ok) return { ok: false, trouble: merged.fault };
    const changed = merged.text !== file.text;
    if (form === 'mxl') {
      // An untouched archive goes back as it came, byte for byte.
      const packed = !changed && file.archive ? file.archive.bytes : await packMxl(encode(merged.text, file.encoding), file.archive);
      return { ok: true, bytes: packed, mediaType: MXL_TYPE };
    }
    return { ok: true, bytes: !changed && !file.archive ? bytes : encode(merged.text, file.encoding), mediaType: XML_TYPE };
  },

  async engravingFor({ bytes, fileName, part, stored }) {
    const file = await openFile(bytes, fileName);
    if (!file.ok) return { ok: false, trouble: file.fault };
    const made = engravingDocument(file.text, part, stored);
    return made.ok ? made : { ok: false, trouble: made.fault };
  },
};
