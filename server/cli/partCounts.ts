import type { Part } from '../../core/music/part.ts';

/** What `bowline score` says of a part: plain counts, hidden notes and hidden marks included. */
export function partCounts(part: Part): Record<string, unknown> {
  const notes = part.measures.flatMap((measure) => measure.notes);
  const technical = notes.flatMap((note) => note.technical);
  const named = (name: string) => technical.filter((mark) => mark.name === name);
  const slurEnds = (type: string) => notes.reduce((sum, note) => sum + note.slurs.filter((slur) => slur.type === type).length, 0);
  const values = (name: string) => {
    const counts: Record<string, number> = {};
    for (const { value = '' } of named(name)) counts[value.trim()] = (counts[value.trim()] ?? 0) + 1;
    return counts;
  };
  return {
    id: part.id,
    name: part.name,
    measures: part.measures.length,
    notes: notes.length,
    rests: notes.filter(({ rest }) => rest).length,
    chordNotes: notes.filter(({ chord }) => chord).length,
    graceNotes: notes.filter(({ grace }) => grace).length,
    slurStarts: slurEnds('start'),
    slurStops: slurEnds('stop'),
    tieStarts: notes.filter(({ ties }) => ties.includes('start')).length,
    upBows: named('up-bow').length,
    downBows: named('down-bow').length,
    openStrings: named('open-string').length,
    harmonics: named('harmonic').length,
    thumbs: named('thumb-position').length,
    fingerings: values('fingering'),
    strings: values('string'),
    hiddenNotes: notes.filter(({ hidden }) => hidden).length,
  };
}
