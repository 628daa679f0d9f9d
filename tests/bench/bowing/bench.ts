import { join } from 'node:path';
import type { StrokeFacts } from '../../../core/bowing/direction/facts.ts';
import { inferDirections } from '../../../core/bowing/direction/inferDirections.ts';
import type { BowTermWeights } from '../../../core/bowing/direction/terms/all.ts';
import { BOW_WEIGHTS } from '../../../core/bowing/direction/weights.ts';
import type { Direction } from '../../../core/bowing/strokes.ts';
import { kindOf } from './kinds.ts';
import type { BowLine } from './lines.ts';
import { performedLines } from './performed.ts';
import { printedLines } from './printed.ts';
import { lessonOf, train } from './train.ts';

type Known = (Direction | null)[];

const other = (way: Direction): Direction => (way === 'down' ? 'up' : 'down');

/** Each phrase in turn from a down-bow; with `known`, from the direction its first bow is known to have. */
function alternating(facts: readonly StrokeFacts[], known: Known): Direction[] {
  const ways: Direction[] = [];
  facts.forEach(({ restBefore }, i) => ways.push(known[i] ?? (restBefore > 0 || i === 0 ? 'down' : other(ways[i - 1]!))));
  return ways;
}

function inferred(facts: readonly StrokeFacts[], known: Known, weights: BowTermWeights): Direction[] {
  const pinned = facts.map((own, i): StrokeFacts => ({ ...own, stroke: { ...own.stroke, direction: known[i] ?? null } }));
  return inferDirections(pinned, 1, weights)[0]?.strokes.map(({ direction }) => direction) ?? [];
}

/** The first known direction of each phrase. */
function firsts({ facts, given }: BowLine): Known {
  let open = true;
  return facts.map(({ restBefore }, i) => {
    if (restBefore > 0) open = true;
    if (!open || given[i] === null) return null;
    open = false;
    return given[i]!;
  });
}

/** Signs and what lies between two of them that agree when bows go in turn, without a rest. */
function implied({ facts, given }: BowLine): Known {
  const all = [...given];
  let sign = -1;
  facts.forEach(({ restBefore }, i) => {
    if (restBefore > 0) sign = -1;
    if (given[i] === null) return;
    const agree = sign >= 0 && (given[sign] === given[i]) === ((i - sign) % 2 === 0);
    if (agree) for (let k = sign + 1; k < i; k += 1) all[k] = other(all[k - 1]!);
    sign = i;
  });
  return all;
}

interface Count {
  wrong: number;
  of: number;
}

function count(into: Count, ways: readonly Direction[], truth: Known, except: Known): void {
  truth.forEach((way, i) => {
    if (way === null || except[i] != null) return;
    into.of += 1;
    if (ways[i] !== way) into.wrong += 1;
  });
}

const shown = ({ wrong, of }: Count): string => `${((100 * (of - wrong)) / of).toFixed(1).padStart(6)} % of ${of}`;

/** Every fifth sign hidden, the others known: as in a part that is marked but for some places. */
const OF = 5;

function measure(name: string, lines: readonly BowLine[], weightsFor: (piece: string) => BowTermWeights): void {
  const fresh = (): [Count, Count] => [{ wrong: 0, of: 0 }, { wrong: 0, of: 0 }];
  const counts = { 'directions given': fresh(), 'given or implied': fresh(), 'first of each phrase known, others': fresh(), 'one sign in five hidden': fresh() };
  const kinds = new Map<string, Count>();
  for (const line of lines) {
    const weights = weightsFor(line.piece);
    const none: Known = line.facts.map(() => null);
    const between = implied(line);
    const [ours, plain] = [inferred(line.facts, none, weights), alternating(line.facts, none)];
    count(counts['directions given'][0], plain, line.given, none);
    count(counts['directions given'][1], ours, line.given, none);
    line.given.forEach((way, i) => {
      if (way === null) return;
      const kind = kindOf(line, i);
      const into = kinds.get(kind) ?? kinds.set(kind, { wrong: 0, of: 0 }).get(kind)!;
      into.of += 1;
      if (ours[i] !== way) into.wrong += 1;
    });
    count(counts['given or implied'][0], plain, between, none);
    count(counts['given or implied'][1], ours, between, none);
    const first = firsts(line);
    count(counts['first of each phrase known, others'][0], alternating(line.facts, first), line.given, first);
    count(counts['first of each phrase known, others'][1], inferred(line.facts, first, weights), line.given, first);
    for (let turn = 0; turn < OF; turn += 1) {
      let sign = 0;
      const known = line.given.map((way) => (way === null || sign++ % OF === turn ? null : way));
      count(counts['one sign in five hidden'][0], alternating(line.facts, known), line.given, known);
      count(counts['one sign in five hidden'][1], inferred(line.facts, known, weights), line.given, known);
    }
  }
  console.log(`\n${name}`);
  for (const [what, [plain, ours]] of Object.entries(counts)) {
    const gone = plain.wrong === 0 ? 0 : (100 * (plain.wrong - ours.wrong)) / plain.wrong;
    console.log(`  ${what.padEnd(36)} in turn from a down-bow${shown(plain)}   inferred${shown(ours)}   errors removed ${gone.toFixed(1)} %`);
  }
  for (const [kind, { wrong, of }] of [...kinds].sort((a, b) => b[1].wrong - a[1].wrong)) console.log(`    ${kind.padEnd(48)} ${String(wrong).padStart(4)} wrong of ${of}`);
}

async function bench(folder: string | undefined): Promise<void> {
  if (!folder) throw new Error('Set CORPUS_DIR to the folder that holds fingering/ytvf and scores.');
  const performed = performedLines(join(folder, 'fingering/ytvf'));
  const printed = await printedLines(join(folder, 'scores/violin-printed-marks'));
  const quartets = await printedLines(join(folder, 'scores/openscore-quartets'));
  const lessons = [...performed, ...printed, ...quartets].map((line) => ({ piece: line.piece, lesson: lessonOf(line) }));
  const held = new Map<string, BowTermWeights>();
  const without = (piece: string): BowTermWeights => held.get(piece) ?? held.set(piece, train(lessons.filter((one) => one.piece !== piece).map(({ lesson }) => lesson))).get(piece)!;
  const weightsFor = process.argv.includes('--quick') ? () => BOW_WEIGHTS : without;
  console.log(process.argv.includes('--quick') ? 'Weights as shipped (they have seen the pieces)' : 'Weights fitted without the piece that is measured');
  measure('Performances (touching bows of one direction count as one)', performed, weightsFor);
  measure('Printed signs, violin', printed, weightsFor);
  measure('Printed signs, quartets', quartets, weightsFor);
}

await bench(process.env.CORPUS_DIR);
