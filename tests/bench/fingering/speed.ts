import { fittedChain } from '../../../core/fingering/fit/chain.ts';
import { contextsOf } from '../../../core/fingering/fit/context.ts';
import { layersOf } from '../../../core/fingering/layers.ts';
import { lineFrom } from '../../../core/fingering/notesInput.ts';
import { prepare, withPin } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { violinPlaces } from '../../../core/fingering/violinPlaces.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { violin } from '../../../core/instruments/violin.ts';
import { cheapestPath } from '../../../core/search/cheapestPath.ts';
import { chance } from '../../support/chance.ts';
import { processorTime } from '../processorTime.ts';

/** A wandering line in C major, eight notes a measure; invented. */
function wandering(count: number) {
  const random = chance(7).next;
  const scale = [55, 57, 59, 60, 62, 64, 65, 67, 69, 71, 72, 74, 76, 77, 79, 81, 83, 84, 86, 88];
  let degree = 8;
  const notes = Array.from({ length: count }, (_, i) => {
    degree = Math.max(0, Math.min(scale.length - 1, degree + Math.round((random() - 0.5) * 6)));
    return { id: `n${i}`, pitch: scale[degree]!, measure: 1 + (i >> 3), onset: (i % 8) / 2, duration: 0.5 };
  });
  return lineFrom({ instrument: 'violin', tempo: 100, notes }).line;
}

function seconds(work: () => void): number {
  const since = processorTime();
  work();
  return since() / 1000;
}

const median = (work: () => void, runs = 5): number => Array.from({ length: runs }, () => seconds(work)).sort((a, b) => a - b)[runs >> 1]!;

const request = (count: number) => ({ instrument: violin, line: wandering(count), tempo: 100, pins: new Map(), aim: 'usual' as const, hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor('violin') });
suggest(prepare(request(500)), 5);
for (const count of [100, 1000, 10_000, 100_000]) {
  const asked = request(count);
  const each = median(() => void suggest(prepare(asked), 5), count > 10_000 ? 1 : 5) / count;
  console.log(`${String(count).padStart(7)} notes: ${(each * 1e6).toFixed(0)} microseconds a note`);
}
const asked = request(8000);
const prepared = prepare(asked);
/** The note in the middle, settled on a string the best fingering does not use. */
const taken = new Set(suggest(prepared, 1)[0]!.notes.map(({ id, place }) => `${id} ${place.string}`));
const middle = prepared.layers.slice(4000).find(({ notes, states }) => states.some(([place]) => !taken.has(`n${notes[0]!} ${place!.string}`)))!;
const note = `n${middle.notes[0]!}`;
const string = middle.states.map(([place]) => place!.string).find((one) => !taken.has(`${note} ${one}`))!;

/** One best and nothing else: the same states and the same weights, no probabilities, no alternatives, no steps. */
const bare = median(() => {
  const { layers } = layersOf(violin, asked.line, (index) => violinPlaces(asked.line[index]!.midi, asked.line[index]!.step));
  const { states, steps } = fittedChain(asked.weights!, contextsOf(asked.line), layers);
  const negative = (rows: Float64Array[]) => rows.map((row) => row.map((value) => -value));
  cheapestPath({ states: negative(states), steps: negative(steps) });
});
const full = median(() => void suggest(prepare(asked), 5));
const again = median(() => {
  const pinned = withPin(prepared, note, { string });
  if (pinned === null) throw new Error(`${note} has no place on string ${string}`);
  cheapestPath(pinned.lattice, pinned.toEnd);
});
const solve = median(() => {
  const solved = prepare({ ...asked, pins: new Map([[note, { string }]]) });
  cheapestPath(solved.lattice, solved.toEnd);
});
console.log(`1,000 measures: five best with every step ${(full / bare).toFixed(2)} of the bare cheapest path; one pin ${(again / solve).toFixed(4)} of solving again`);
