import { carriedPlaces } from '../../core/agreement/carried.ts';
import type { Documents } from '../../server/http/deps.ts';
import { smallPart } from './smallPart.ts';

/** Reads "Violin I:4,Oboe:4" as a score of those parts and measures; anything with "broken" in it is refused. Documents have tests of their own. */
export const fakeDocuments: Documents = {
  async importScore(bytes) {
    const text = new TextDecoder().decode(bytes);
    if (text.includes('broken')) return { ok: false, trouble: { code: 'NOT_WELL_FORMED', text: 'Line 7: the element note is not closed.', line: 7, measure: '2', element: 'note' } };
    const parts = text.split(',').map((one, index) => {
      const [name = '', measures] = one.split(':');
      const part = smallPart(`P${index + 1}`, name, Number(measures));
      return { ...part, instrument: /^violin/i.test(name) ? ('violin' as const) : /^viola/i.test(name) ? ('viola' as const) : null };
    });
    return { ok: true, score: { title: 'Harbour', composer: 'T. Holmwood', parts } };
  },
  async realign(part, stored) {
    const before = new Set(stored.measures.flatMap((measure) => measure.notes.map((note) => note.id)));
    const now = part.measures.flatMap((measure) => measure.notes.map((note) => note.id));
    const kept = now.filter((id) => before.has(id)).length;
    return { part, kept, added: now.length - kept, removed: before.size - kept, measures: null };
  },
  carriedPlaces: async (state, older, newer) => carriedPlaces(state, older, newer),
  async markDocument({ bytes, marks, form, superseded }) {
    return { ok: true, bytes: new TextEncoder().encode(JSON.stringify({ source: new TextDecoder().decode(bytes), marks, superseded })), mediaType: form === 'mxl' ? 'application/vnd.recordare.musicxml' : 'application/vnd.recordare.musicxml+xml' };
  },
  async engravingFor({ part, stored }) {
    return { ok: true, text: `<score-partwise>${part} ${stored.measures.length}</score-partwise>` };
  },
  async printPart({ part, marks, heading, form, paper, margins, staff, fingerings }) {
    if (staff < 7) return { ok: false, trouble: { code: 'STAFF_TOO_SMALL', text: 'Too small for two players.' } };
    const page = new TextEncoder().encode(JSON.stringify({ part, marks, heading, paper, margins, staff, fingerings }));
    const files = Array.from({ length: form === 'svg' ? 2 : 1 }, () => ({ bytes: page, mediaType: form === 'svg' ? 'image/svg+xml' : 'application/pdf' }));
    return { ok: true, pages: 2, turns: [], warnings: [], files };
  },
};
