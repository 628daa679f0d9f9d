import { lineFrom } from '../../../core/fingering/notesInput.ts';
import { prepare, withPin } from '../../../core/fingering/prepare.ts';
import { suggest } from '../../../core/fingering/suggest.ts';
import { weightsFor } from '../../../core/fingering/weights/weightsFor.ts';
import { USUAL_HAND } from '../../../core/hand/reach.ts';
import { violin } from '../../../core/instruments/violin.ts';
import { cheapestPath } from '../../../core/search/cheapestPath.ts';
import { mulberry } from './random.ts';

/** A wandering line in C major, eight notes a measure; invented. */
function wandering(count: number) {
  const random = mulberry(7);
  const scale = [55, 57, 59, 60, 62, 64, 65, 67, 69, 71, 72, 74, 76, 77, 79, 81, 83, 84, 86, 88];
  let degree = 8;
  const notes = Array.from({ length: count }, (_, i) => {
    degree = Math.max(0, Math.min(scale.length - 1, degree + Math.round((random() - 0.5) * 6)));
    return { id: `n${i}`, pitch: scale[degree]!, measure: 1 + (i >> 3), onset: (i % 8) / 2, duration: 0.5 };
  });
  return lineFrom({ instrument: 'violin', tempo: 100, notes }).line;
}

/** Time on the processor: other work on the machine does not count. */
function seconds(work: () => void): number {
  const start = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1e6;
}

const request = (count: number) => ({ instrument: violin, line: wandering(count), tempo: 100, pins: new Map(), aim: 'usual' as const, hand: USUAL_HAND, players: 1, sliding: 1, weights: weightsFor('violin') });
suggest(prepare(request(500)), 5);
for (const count of [100, 1000, 10_000, 100_000]) {
  const asked = request(count);
  console.log(`${String(count).padStart(7)} notes: ${((seconds(() => void suggest(prepare(asked), 5)) / count) * 1e6).toFixed(0)} microseconds a note`);
}
const asked = request(8000);
const prepared = prepare(asked);
const full = seconds(() => void suggest(prepare(asked), 5));
const bare = seconds(() => void cheapestPath(prepare(asked).lattice));
const again = seconds(() => void suggest(withPin(prepared, 'n4000', { string: 2 }) ?? withPin(prepared, 'n4000', { string: 3 })!, 1));
console.log(`1,000 measures: five best with every step ${(full / bare).toFixed(2)} of the bare cheapest path; after one pin ${(again / full).toFixed(3)} of the whole`);
