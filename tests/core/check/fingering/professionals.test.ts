import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { checkPart } from '../../../../core/check/checkPart.ts';
import type { Finding } from '../../../../core/check/finding.ts';
import { RULES } from '../../../../core/check/registry.ts';
import type { LineNote } from '../../../../core/fingering/line.ts';
import type { Mark } from '../../../../core/music/mark.ts';
import type { Measure, Note, Part, Slur } from '../../../../core/music/part.ts';
import type { Pitch } from '../../../../core/music/pitch.ts';
import { seatsFor } from '../../../../core/music/seat.ts';
import { exact, fraction } from '../../../../core/music/time.ts';
import type { Label, Piece } from '../../../bench/fingering/pieces.ts';
import { loadTnua } from '../../../bench/fingering/tnua.ts';
import { loadYtvf } from '../../../bench/fingering/ytvf.ts';

const corpus = process.env.CORPUS_DIR;
const RULES_OF_THE_HAND = RULES.map(({ id }) => id).filter((id) => id.startsWith('fingering/'));

const LETTERS = ['C', 'D', 'E', 'F', 'G', 'A', 'B'] as const;
const NATURAL = [0, 2, 4, 5, 7, 9, 11];

function pitchOf({ step, midi }: LineNote): Pitch {
  const octave = Math.floor(step / 7);
  return { step: LETTERS[step % 7]!, alter: midi - 12 * (octave + 1) - NATURAL[step % 7]!, octave };
}

const time = (value: number) => exact(fraction(`${Math.round(value * 960)}/960`));

function noteOf(line: LineNote, index: number): Note {
  return {
    id: line.id, pitch: pitchOf(line), midi: line.midi, onset: time(line.onset), duration: time(line.duration), voice: '1', index, slurs: [], ties: [], technical: [], articulations: [], ornaments: [], dynamic: 'mf', tempo: null,
    ...(line.chord ? { chord: true as const } : {}),
  };
}

/** Runs of notes each under one slur with the note before. */
function slursOf(line: readonly LineNote[]): Slur[] {
  return line.flatMap(({ id }, i): Slur[] => {
    if (line[i]!.slurred || !line[i + 1]?.slurred) return [];
    const end = line.findIndex((note, j) => j > i && !note.slurred);
    return [{ from: id, to: line[(end < 0 ? line.length : end) - 1]!.id }];
  });
}

function partOf({ line }: Piece): Part {
  const ordinals = [...new Set(line.map(({ measure }) => measure))];
  const measures = ordinals.map((ordinal, i): Measure => {
    const notes = line.filter(({ measure }) => measure === ordinal);
    const start = time(notes[0]!.at - notes[0]!.onset);
    return { ordinal: i + 1, number: String(i + 1), start, length: time(Math.max(...notes.map(({ onset, duration }) => onset + duration))), time: null, fifths: null, words: [], wedges: [], notes: notes.map(noteOf) };
  });
  return { id: 'P1', name: 'Violin', instrument: 'violin', transposition: 0, measures, slurs: slursOf(line) };
}

/** Without what may be the second note of a chord: the files do not tell it from a measure of one note. */
function upperLine({ line, players, ...piece }: Piece): Piece {
  const kept = line.map(({ chord }) => !chord);
  return { ...piece, line: line.filter((_, i) => kept[i]), players: players.map((labels) => labels.filter((_, i) => kept[i])) };
}

const OPEN = [76, 69, 62, 55];

/** A label that contradicts its own pitch: a string that begins above it, or 0 on a stopped note. About one label in 700. */
function isSlip({ midi }: LineNote, { string, finger }: Label): boolean {
  const above = midi - OPEN[string - 1]!;
  return string === 0 || above < 0 || (finger === 0) !== (above === 0);
}

/** All that a player wrote, or the finger alone on the first note of a measure and after each move of the hand, as parts are printed. */
function marksOf({ line }: Piece, labels: Piece['players'][number], sparse: boolean): Mark[] {
  return line.flatMap(({ id, measure }, i): Mark[] => {
    const [label, before] = [labels[i], labels[i - 1]];
    if (!label || isSlip(line[i]!, label)) return [];
    const told = !sparse || before?.position !== label.position || line[i - 1]?.measure !== measure;
    if (!told) return [];
    const finger: Mark = { note: id, value: { kind: 'finger', finger: label.finger as 0 | 1 | 2 | 3 | 4 } };
    return sparse ? [finger] : [finger, { note: id, value: { kind: 'string', string: label.string } }];
  });
}

interface Checked {
  measures: number;
  findings: Finding[];
}

function checkedAs(piece: Piece, sparse: boolean): Checked[] {
  const part = partOf(piece);
  return piece.players.map((player) => {
    const findings = checkPart({ part, seats: seatsFor(2), marks: marksOf(piece, player, sparse), settings: {} });
    return { measures: part.measures.length, findings: findings.filter(({ rule }) => RULES_OF_THE_HAND.includes(rule)) };
  });
}

function ratesOf(checked: readonly Checked[]): Record<string, number> {
  const rates = Object.fromEntries(RULES_OF_THE_HAND.map((id) => [id, per100(checked, ({ rule }) => rule === id)]));
  console.log(`${checked.length} fingerings; findings in 100 measures:`, rates);
  return rates;
}

function per100(checked: readonly Checked[], keep: (finding: Finding) => boolean): number {
  const measures = checked.reduce((sum, one) => sum + one.measures, 0);
  return Math.round((checked.flatMap(({ findings }) => findings).filter(keep).length * 10_000) / measures) / 100;
}

describe.skipIf(!corpus).each([['in full, finger and string', false], ['sparse, as parts are printed', true]])('what ten professionals wrote %s (needs CORPUS_DIR)', (_how, sparse) => {
  const checked: Checked[] = [];
  beforeAll(() => {
    checked.push(...loadTnua(join(corpus!, 'fingering/tnua')).flatMap((piece) => checkedAs(upperLine(piece), sparse)));
  }, 300_000);

  it('has at most 1 finding of any rule of the hand in 100 measures', () => {
    const rates = ratesOf(checked);
    expect(Object.entries(rates).filter(([, rate]) => rate > 1)).toEqual([]);
  });

  it('is never said to be unplayable', () => {
    expect(checked.flatMap(({ findings }) => findings).filter(({ severity }) => severity === 'cannotPlay').map(({ text }) => text)).toEqual([]);
  });
});

describe.skipIf(!corpus)('what thirty performers play, double stops and slurs included (needs CORPUS_DIR)', () => {
  it('has at most 2 findings of any rule of the hand in 100 measures', () => {
    const checked = loadYtvf(join(corpus!, 'fingering/ytvf')).flatMap((piece) => checkedAs(piece, false));
    expect(Object.entries(ratesOf(checked)).filter(([, rate]) => rate > 2)).toEqual([]);
  }, 300_000);
});
