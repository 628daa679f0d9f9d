import { checkPart } from '../../../core/check/checkPart.ts';
import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
import type { StringPart } from '../../../core/music/part.ts';
import { seatsFor } from '../../../core/music/seat.ts';
import { processorTime } from '../processorTime.ts';
import { chance } from '../../support/chance.ts';
import { anyMark, anyMarks, longPart } from '../../support/longPart.ts';

function timed<T>(work: () => T): { result: T; ms: number } {
  const since = processorTime();
  return { result: work(), ms: since() };
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1]!;

const [MEASURES, PLAYERS, MARKS, EDITS] = [1000, 18, 3000, 40];
const random = chance(3);
const part = longPart(MEASURES, random) as StringPart;
const seats = seatsFor(PLAYERS);
let marks = anyMarks(part, seats, MARKS, random);
const standing = standingCheck({ part, seats, settings: {} });
standing.findings(marks);
const [whole, again]: [number[], number[]] = [[], []];
let differing = 0;
for (let edit = 0; edit < EDITS; ) {
  const mark = anyMark(part, seats, random, [1 + random.below(MEASURES)]);
  if (!mark) continue;
  edit += 1;
  marks = [...marks, mark];
  const kept = timed(() => standing.findings(marks));
  const full = timed(() => checkPart({ part, seats, marks, settings: {} }));
  if (JSON.stringify(kept.result) !== JSON.stringify(full.result)) differing += 1;
  again.push(kept.ms);
  whole.push(full.ms);
}
console.log(`${MEASURES} measures, ${PLAYERS / 2} desks, ${MARKS} marks, ${EDITS} edits of one measure each`);
console.log(`whole check            median ${median(whole).toFixed(0)} ms`);
console.log(`after an edit          median ${median(again).toFixed(1)} ms, worst ${Math.max(...again).toFixed(1)} ms`);
console.log(`ratio                  median ${(median(again) / median(whole)).toFixed(4)}, sum over all edits ${(again.reduce((a, b) => a + b) / whole.reduce((a, b) => a + b)).toFixed(4)}`);
console.log(`other findings         ${differing} of ${EDITS} edits`);
