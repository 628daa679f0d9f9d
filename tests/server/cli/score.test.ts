import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { partCounts } from '../../../server/cli/partCounts.ts';
import { openScore } from '../../../server/cli/scoreFile.ts';
import { CORPUS } from '../../support/corpus.ts';

/** Counts of one file by an independent reader: whole file, hidden notes and marks included. */
interface Expected {
  parse_error?: string;
  parts?: number;
  partnames?: string[];
  counts?: Record<string, number>;
  tech?: Record<string, number>;
  fingvals?: Record<string, number>;
  stringvals?: Record<string, number>;
  odd?: Record<string, number>;
}

type Counts = Record<string, unknown>;

const read = (file: string): Record<string, Expected> => (CORPUS ? (JSON.parse(readFileSync(join(CORPUS, 'expected-counts', file), 'utf8')) as Record<string, Expected>) : {});
const EXPECTED: Record<string, Expected> = {
  ...read('scores.json'),
  ...Object.fromEntries(Object.entries(read('musicxml-testsuite.json')).map(([name, counts]) => [`musicxml-testsuite/${name}`, counts])),
};
let compared = 0;
afterAll(() => void (compared && console.log(`counts compared on ${compared} files`)));

const sum = (parts: Counts[], field: string) => parts.reduce((total, part) => total + (part[field] as number), 0);

function merged(parts: Counts[], field: string): Record<string, number> {
  const all: Record<string, number> = {};
  for (const part of parts) for (const [value, n] of Object.entries(part[field] as Record<string, number>)) all[value] = (all[value] ?? 0) + n;
  return all;
}

function found(parts: Counts[]): Record<string, unknown> {
  return {
    parts: parts.length,
    notes: sum(parts, 'notes'), rests: sum(parts, 'rests'), chord_notes: sum(parts, 'chordNotes'), grace: sum(parts, 'graceNotes'),
    slur_start: sum(parts, 'slurStarts'), slur_stop: sum(parts, 'slurStops'), tie_start: sum(parts, 'tieStarts'), hidden: sum(parts, 'hiddenNotes'),
    'up-bow': sum(parts, 'upBows'), 'down-bow': sum(parts, 'downBows'), 'open-string': sum(parts, 'openStrings'), harmonic: sum(parts, 'harmonics'), 'thumb-position': sum(parts, 'thumbs'),
    fingerings: merged(parts, 'fingerings'), strings: merged(parts, 'strings'),
  };
}

function wanted({ parts, counts = {}, tech = {}, fingvals = {}, stringvals = {}, odd = {} }: Expected): Record<string, unknown> {
  const count = (field: string) => counts[field] ?? 0;
  const mark = (field: string) => tech[field] ?? 0;
  return {
    parts,
    notes: count('notes'), rests: count('rests'), chord_notes: count('chord_notes'), grace: count('grace'),
    slur_start: count('slur_start'), slur_stop: count('slur_stop'), tie_start: count('tie_start'), hidden: odd['note print-object=no'] ?? 0,
    'up-bow': mark('up-bow'), 'down-bow': mark('down-bow'), 'open-string': mark('open-string'), harmonic: mark('harmonic'), 'thumb-position': mark('thumb-position'),
    fingerings: fingvals, strings: stringvals,
  };
}

describe.skipIf(!CORPUS)('bowline score counts what an independent reader counted (skipped without CORPUS_DIR)', () => {
  it.each(Object.entries(EXPECTED))('%s', async (name, expected) => {
    const path = join(CORPUS!, 'scores', name);
    if (expected.parse_error !== undefined) {
      await expect(openScore(path)).rejects.toThrow(/:\d+: /);
      return;
    }
    const { read: score } = await openScore(path);
    expect(found(score.score.parts.map(partCounts))).toEqual(wanted(expected));
    compared++;
  });
});
