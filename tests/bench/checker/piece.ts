import { basename } from 'node:path';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { checkPiece, packed } from '../../../server/jobs/checkPiece.ts';
import { lookThrough } from '../../../server/jobs/lookThrough.ts';
import { corpusScores, CORPUS, stringParts } from '../../support/corpus.ts';
import { processorTime } from '../processorTime.ts';
import { marked, SEATS } from './marked.ts';

/** Whole movements looked through, every string part beside all the others, beside reading their files; and how long the server stands still while a worker does it. */
if (!CORPUS) throw new Error('Set CORPUS_DIR to the folder that holds scores/.');

async function timed<T>(work: () => T | Promise<T>): Promise<{ result: T; ms: number }> {
  const since = processorTime();
  return { result: await work(), ms: since() };
}

const share = (part: number, whole: number): string => (part / whole).toFixed(2);
const orchestra = corpusScores().filter((name) => name.startsWith('openscore-orchestra'));
const sum = { reading: 0, bare: 0, marked: 0 };
// Once beforehand, so that no movement pays for the compiler.
checkPiece((await stringParts(orchestra[0]!)).map((part, i) => packed({ id: String(i), name: part.name, part, seats: SEATS, settings: {}, marks: [], mutes: {} })), () => {});
for (const name of orchestra) {
  const { result: parts, ms: reading } = await timed(() => stringParts(name));
  const orders = (isMarked: boolean) => parts.map((part, i) => ({ id: String(i), name: part.name, part, seats: SEATS, settings: {}, marks: isMarked ? marked(part, () => []).marks : [], mutes: {} }));
  const [bareOrders, markedOrders] = [orders(false), orders(true)];
  const [barePacked, markedPacked] = [bareOrders.map(packed), markedOrders.map(packed)];
  const bare = await timed(() => checkPiece(barePacked, () => {}));
  const full = await timed(() => checkPiece(markedPacked, () => {}));
  const delay = monitorEventLoopDelay({ resolution: 5 });
  delay.enable();
  const begun = performance.now();
  const again: Uint8Array[] = [];
  for (const order of markedOrders) {
    again.push(packed(order));
    await new Promise((resolve) => setImmediate(resolve));
  }
  const answers = await lookThrough(again);
  const wall = performance.now() - begun;
  delay.disable();
  sum.reading += reading;
  sum.bare += bare.ms;
  sum.marked += full.ms;
  const marks = markedOrders.reduce((all, order) => all + order.marks.length, 0);
  console.log(
    `${basename(name, '.mxl')}: ${parts.length} string parts, ${parts[0]!.measures.length} measures, read in ${reading.toFixed(0)} ms; looked through unmarked ${bare.ms.toFixed(0)} ms (${share(bare.ms, reading)} of reading), with ${marks} marks ${full.ms.toFixed(0)} ms (${share(full.ms, reading)}), ${answers.flatMap(({ findings }) => findings).length} findings; in a worker ${(wall / 1000).toFixed(1)} s, server still for ${(delay.max / 1e6).toFixed(0)} ms at most`,
  );
}
console.log(`all: read in ${sum.reading.toFixed(0)} ms; unmarked ${share(sum.bare, sum.reading)} of reading, marked ${share(sum.marked, sum.reading)}`);
