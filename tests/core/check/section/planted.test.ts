import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isTremolo } from '../../../../core/bowing/strokes.ts';
import { checkPart } from '../../../../core/check/checkPart.ts';
import type { Finding } from '../../../../core/check/finding.ts';
import { playedTogether } from '../../../../core/matching/together.ts';
import type { Mark } from '../../../../core/music/mark.ts';
import type { Part } from '../../../../core/music/part.ts';
import { slurredNotes } from '../../../../core/music/slurredNotes.ts';
import { seatsFor } from '../../../../core/music/seat.ts';
import { readScore } from '../../../../core/musicxml/readScore.ts';
import { openFile } from '../../../../server/files/openFile.ts';
import { CORPUS, corpusPath } from '../../../support/corpus.ts';

const FILES = ['Haydn_104_1', 'Schubert_D.485_1', 'Beethoven_Op.67_2'];
const seats = seatsFor(12);

async function violinsOf(file: string): Promise<[Part, Part]> {
  const name = join('openscore-orchestra', `${file}.mxl`);
  const opened = await openFile(readFileSync(corpusPath(name)), name);
  const read = opened.ok ? readScore(opened.text) : opened;
  if (!('score' in read)) throw new Error(`${file} cannot be read`);
  return [read.score.parts.find(({ name: part }) => part === 'Violin 1')!, read.score.parts.find(({ name: part }) => part === 'Violin 2')!];
}

const across = (firsts: Part, seconds: Part, ofFirsts: Mark[], ofSeconds: Mark[]): Finding[] =>
  checkPart({ part: seconds, seats, marks: ofSeconds, settings: {}, others: [{ section: 'Violin 1', part: firsts, marks: ofFirsts, seats }] }).filter(({ rule }) => rule.startsWith('section/unison'));

/** A sign on the first bowed note of each unison that begins a bow for both: not bound, not plucked, not trembling. */
function openings(firsts: Part, seconds: Part): (readonly [string, string])[] {
  const notes = new Map([...firsts.measures, ...seconds.measures].flatMap((measure) => measure.notes.map((note) => [note.id, note] as const)));
  const bound = new Set([...slurredNotes(firsts), ...slurredNotes(seconds)]);
  const plain = (id: string) => !bound.has(id) && !notes.get(id)!.pizzicato && !isTremolo(notes.get(id)!) && !notes.get(id)!.ties.includes('stop');
  return playedTogether(firsts, seconds, { unison: 6, rhythm: 10_000 }).flatMap(({ notes: pairs }) => pairs.filter(([a, b]) => plain(a) && plain(b)).slice(0, 1));
}

describe.skipIf(!CORPUS)('a bow turned round in one of two sections in unison, in printed scores (needs CORPUS_DIR)', () => {
  it.each(FILES)('%s: nothing is found while both are marked alike, and each turned bow is', async (file) => {
    const [firsts, seconds] = await violinsOf(file);
    const places = openings(firsts, seconds);
    const mark = (note: string, bow: 'up' | 'down'): Mark => ({ note, value: { kind: 'bow', bow } });
    const ofFirsts = places.map(([a]) => mark(a, 'down'));
    const clean = across(firsts, seconds, ofFirsts, places.map(([, b]) => mark(b, 'down')));
    expect(places.length).toBeGreaterThan(8);
    const missed = places.filter((_, turned) => {
      const found = across(firsts, seconds, ofFirsts, places.map(([, b], i) => mark(b, i === turned ? 'up' : 'down')));
      return !found.some(({ rule, message, notes }) => rule === 'section/unison-bowed-against' && message === 'unison' && notes[0] === places[turned]![1]);
    });
    expect({ clean: clean.map(({ text }) => text), missed }).toEqual({ clean: [], missed: [] });
  }, 120_000);
});
