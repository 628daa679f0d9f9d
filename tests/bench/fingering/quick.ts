import { fittedChain } from '../../../core/fingering/fit/chain.ts';
import { contextsOf } from '../../../core/fingering/fit/context.ts';
import type { Place } from '../../../core/fingering/frame.ts';
import type { LineNote } from '../../../core/fingering/line.ts';
import { celloPlaces } from '../../../core/fingering/celloPlaces.ts';
import { violinPlaces } from '../../../core/fingering/violinPlaces.ts';
import { cheapestPath } from '../../../core/search/cheapestPath.ts';
import { marginalsOf, stepFactors } from '../../../core/search/marginals.ts';
import { loadTnua } from './tnua.ts';
import { loadYtvf } from './ytvf.ts';
import { loadDuport } from './duport.ts';
import { lessonOf } from './lesson.ts';
import { train } from './train.ts';

const root = `${process.env.CORPUS_DIR}/fingering`;
const cello = process.env.CELLO === '1';
const places = (n: LineNote): Place[] => (cello ? celloPlaces(n.midi) : violinPlaces(n.midi, n.step));
const main = cello ? loadDuport(`${root}/cello-duport`) : loadTnua(`${root}/tnua`);
const extra = cello ? [] : loadYtvf(`${root}/ytvf`);
let covered = 0, all = 0;
for (const p of main) for (const pl of p.players) pl.forEach((l, i) => { if (!l) return; all++; if (places(p.line[i]!).some((q) => q.string === l.string && q.finger === l.finger && q.position === l.position && (l.off === undefined || q.off === l.off))) covered++; else if (process.env.SHOW) console.log(p.name, i, p.line[i]!.midi, l); });
console.log('coverage', covered / all, all, 'chords', main.map((p) => p.line.filter((n) => n.chord).length).join(' '));
const el = extra.map((p) => lessonOf(p, 0.5, places));
const tl = new Map(main.map((p) => [p.name, lessonOf(p, 1, places)]));
const works = [...new Set(main.map((p) => p.work))];
const only = process.env.ONLY?.split(',');
let hits = 0, notes = 0;
for (const work of works) {
  if (only && !only.includes(work)) continue;
  const t1 = Date.now();
  const w = train([...el, ...main.filter((p) => p.work !== work).map((p) => tl.get(p.name)!)], Number(process.env.SEED ?? 1), Number(process.env.EPOCHS ?? 24));
  const t2 = Date.now();
  for (const p of main.filter((q) => q.work === work)) {
    const layers = p.line.map((n, i) => ({ notes: [i], states: places(n).map((q) => [q]) }));
    const chain = fittedChain(w, contextsOf(p.line), layers);
    const m = marginalsOf(chain, stepFactors(chain));
    const path = cheapestPath({ states: m.states.map((s) => s.map((v) => 1 - v)), steps: m.steps.map((s) => s.map((v) => 1 - v)) })!.states;
    let hit = 0, n = 0;
    for (const pl of p.players) pl.forEach((lab, i) => { if (!lab) return; n++; const q = layers[i]!.states[path[i]!]![0]!; if (q.string === lab.string && q.finger === lab.finger && q.position === lab.position) hit++; });
    console.log(p.name, 'mea', (100 * hit / n).toFixed(1));
    hits += hit; notes += n;
  }
  console.log(work, 'train s', (t2 - t1) / 1000, 'eval s', (Date.now() - t2) / 1000);
}
console.log('ALL', (100 * hits / notes).toFixed(2));
