import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Place } from '../../../core/fingering/frame.ts';
import type { LineNote } from '../../../core/fingering/line.ts';
import { lineOfPart } from '../../../core/fingering/partLine.ts';
import { prepare } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { instrumentNamed } from '../../../core/instruments/instrumentNamed.ts';
import { readScore } from '../../../core/musicxml/readScore.ts';
import { openFile } from '../../../server/files/openFile.ts';
import { loadYtvf } from '../../bench/fingering/ytvf.ts';

const corpus = process.env.CORPUS_DIR;
const violin = instrumentNamed('violin');
const OPEN = [76, 69, 62, 55];

/** The widest a pair of fingers is known to take, mm on a string of 328: a major tenth in first position is 118 for 1-4. From memory; apart from the engine's table. */
const WIDEST: Record<string, number> = { 12: 56, 23: 48, 34: 48, 13: 92, 24: 92, 14: 126 };
const millimetres = (above: number): number => 328 * (1 - 2 ** (-above / 12));

/** Why no hand holds these at once, or null. Written apart from the engine. */
function impossible(notes: readonly LineNote[], places: readonly Place[]): string | null {
  if (notes.length !== places.length) return 'a note is missing';
  for (const [k, { string, above, finger }] of places.entries()) {
    if (OPEN[string - 1]! + above !== notes[k]!.midi) return 'sounds another pitch';
    if ((finger === 0) !== (above === 0)) return 'open where it is stopped';
  }
  const strings = places.map(({ string }) => string).sort();
  if (strings.some((string, k) => k > 0 && string !== strings[k - 1]! + 1)) return 'strings not side by side';
  for (const [k, a] of places.entries()) {
    for (const b of places.slice(k + 1)) {
      if (a.finger === 0 || b.finger === 0) continue;
      if (a.finger === b.finger && a.above !== b.above) return 'one finger in two places';
      const [low, high] = a.finger < b.finger ? [a, b] : [b, a];
      const span = millimetres(high.above) - millimetres(low.above);
      if (span < 0) return 'fingers crossed';
      if (a.finger !== b.finger && span > WIDEST[`${low.finger}${high.finger}`]!) return `${low.finger}-${high.finger} over ${span.toFixed(0)} mm`;
    }
  }
  return null;
}

/** Every double stop and chord of a line with the places the first fingering gives it. */
function chordsOf(line: LineNote[], tempo: number): { notes: LineNote[]; places: Place[] }[] {
  const prepared = prepare({ instrument: violin, line, tempo, pins: new Map(), aim: 'usual', hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor('violin') });
  const placeOf = new Map(suggest(prepared, 1)[0]!.notes.map(({ id, place }) => [id, place]));
  const chords: LineNote[][] = [];
  for (const note of line) (note.chord ? chords.at(-1)! : (chords[chords.push([]) - 1] = [])).push(note);
  return chords.filter(({ length }) => length > 1).map((notes) => ({ notes, places: notes.flatMap(({ id }) => placeOf.get(id) ?? []) }));
}

const wrong = (chords: ReturnType<typeof chordsOf>): string[] => chords.flatMap(({ notes, places }) => {
  const why = impossible(notes, places);
  return why === null ? [] : [`measure ${notes[0]!.measure}: ${why}`];
});

describe.skipIf(!corpus)('double stops that violinists play (needs CORPUS_DIR)', () => {
  const pieces = corpus ? loadYtvf(join(corpus, 'fingering/ytvf')).map((piece) => ({ ...piece, chords: chordsOf(piece.line, 90) })) : [];

  it('every one is fingered, none impossibly', () => {
    expect(pieces.flatMap(({ chords }) => chords).length).toBeGreaterThan(1000);
    for (const { name, chords } of pieces) expect(wrong(chords), name).toEqual([]);
  });

  it('of the octaves at least eight in ten have the two fingers the performer chose', () => {
    const [seen, differing] = [{ octaves: 0, agree: 0 }, new Map<string, number>()];
    for (const { line, chords, players: [labels] } of pieces) {
      const label = new Map(line.map(({ id }, i) => [id, labels![i]]));
      for (const { notes, places } of chords) {
        if (notes.length !== 2 || Math.abs(notes[0]!.midi - notes[1]!.midi) !== 12) continue;
        const lower = notes[0]!.midi < notes[1]!.midi ? [0, 1] : [1, 0];
        const ours = lower.map((k) => places[k]!.finger).join('-');
        const theirs = lower.map((k) => label.get(notes[k]!.id)!.finger).join('-');
        seen.octaves += 1;
        if (ours === theirs) seen.agree += 1;
        else differing.set(`${theirs} as ${ours}`, (differing.get(`${theirs} as ${ours}`) ?? 0) + 1);
      }
    }
    console.log('octaves of the performers:', seen, Object.fromEntries(differing));
    expect(seen.agree / seen.octaves).toBeGreaterThan(0.8);
  });
});

describe.skipIf(!corpus)('chords for violin alone (needs CORPUS_DIR)', () => {
  it.each([['bwv1001', 400], ['bwv1002', 200], ['bwv1006', 200]])('the whole of %s, pages full of chords included, has no impossible one', async (name, least) => {
    const opened = await openFile(readFileSync(join(corpus!, `scores/bach-violin-solo/${name}.mxl`)), `${name}.mxl`);
    const read = opened.ok ? readScore(opened.text) : null;
    const part = read?.ok ? read.score.parts[0]! : null;
    const { line, tempo } = lineOfPart(part!, 1, part!.measures.length);
    const chords = chordsOf(line, tempo ?? 90);
    expect(chords.length).toBeGreaterThan(least);
    expect(wrong(chords)).toEqual([]);
  });
});
