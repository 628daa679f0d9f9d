import { violinPlaces } from '../../../core/fingering/violinPlaces.ts';
import { placeSlots, stepSlots } from '../../../core/fingering/fit/score.ts';
import { Slots } from '../../../core/fingering/fit/slots.ts';
import { emptyStep } from '../../../core/fingering/fit/step.ts';
import { loadTnua } from './tnua.ts';
import { loadYtvf } from './ytvf.ts';
import { forwardBackward, lessonOf, train, type Lesson } from './model.ts';

const root = `${process.env.CORPUS_DIR}/fingering`;
const t0 = Date.now();
const tnua = loadTnua(`${root}/tnua`);
const ytvf = loadYtvf(`${root}/ytvf`);
const places = (n: { midi: number; step: number }) => violinPlaces(n.midi, n.step);
for (const p of [...tnua, ...ytvf]) p.line.forEach((n, i) => { if (violinPlaces(n.midi, n.step).length === 0) console.log('no place', p.name, i, n.midi); });
let covered = 0, all = 0;
for (const p of tnua) for (const pl of p.players) pl.forEach((l, i) => { if (!l) return; all++; if (places(p.line[i]!).some((q) => q.string === l.string && q.finger === l.finger && q.position === l.position)) covered++; });
console.log('coverage', covered / all, 'load', Date.now() - t0);
const ok = (p: { line: { midi: number; step: number }[] }) => p.line.every((n) => places(n).length > 0);
const yl = ytvf.filter(ok).map((p) => lessonOf(p, 0.5, places));
const tl = new Map(tnua.map((p) => [p.name, lessonOf(p, 1, places)]));
const works = [...new Set(tnua.map((p) => p.work))];
const only = process.env.ONLY?.split(',');
const slots = new Slots(), step = emptyStep();
function scores(w: Float32Array, l: Lesson, k: number) {
  const sum = () => { let t = 0; for (let i = 0; i < slots.count; i++) t += w[slots.at[i]!]!; return t * k; };
  const unary = l.places.map((ps, i) => Float64Array.from(ps, (p) => { placeSlots(slots, l.contexts[i]!, p); return sum(); }));
  const pair = l.places.map((ps, i) => { if (i === 0) return new Float64Array(0); const out = new Float64Array(ps.length * l.places[i - 1]!.length); l.places[i - 1]!.forEach((a, x) => ps.forEach((b, y) => { stepSlots(slots, step, l.contexts[i - 1]!, l.contexts[i]!, a, b); out[x * ps.length + y] = sum(); })); return out; });
  return { unary, pair };
}
function viterbi(unary: Float64Array[], pair: Float64Array[]): number[] {
  const back: Int16Array[] = []; let prev = unary[0]!;
  for (let i = 1; i < unary.length; i++) { const n = unary[i]!.length; const cur = new Float64Array(n).fill(-Infinity); const b = new Int16Array(n); for (let y = 0; y < n; y++) { for (let x = 0; x < prev.length; x++) { const v = prev[x]! + pair[i]![x * n + y]!; if (v > cur[y]!) { cur[y] = v; b[y] = x; } } cur[y]! += unary[i]![y]!; } back.push(b); prev = cur; }
  let at = prev.indexOf(Math.max(...prev)); const out = [at]; for (let i = back.length - 1; i >= 0; i--) { at = back[i]![at]!; out.push(at); } return out.reverse();
}
let tot = { v: 0, m: 0, n: 0 };
for (const work of works) {
  if (only && !only.includes(work)) continue;
  const t1 = Date.now();
  const w = train([...yl, ...tnua.filter((p) => p.work !== work).map((p) => tl.get(p.name)!)], Number(process.env.SEED ?? 1), Number(process.env.EPOCHS ?? 24));
  const t2 = Date.now();
  for (const p of tnua.filter((q) => q.work === work)) {
    const l = tl.get(p.name)!;
    const { unary, pair } = scores(w, l, 1.3);
    const v = viterbi(unary, pair);
    const { marginals, pairs } = forwardBackward(unary, pair);
    const m = viterbi(marginals, pairs);
    const acc = (path: number[]) => { let hit = 0, n = 0; for (const pl of p.players) pl.forEach((lab, i) => { if (!lab) return; n++; const q = l.places[i]![path[i]!]!; if (q.string === lab.string && q.finger === lab.finger && q.position === lab.position) hit++; }); return [hit, n] as const; };
    const [a, n] = acc(v), [b] = acc(m);
    console.log(p.name, 'viterbi', (100 * a / n).toFixed(1), 'mea', (100 * b / n).toFixed(1));
    tot.v += a; tot.m += b; tot.n += n;
  }
  console.log(work, 'train s', (t2 - t1) / 1000, 'eval s', (Date.now() - t2) / 1000);
}
console.log('ALL viterbi', (100 * tot.v / tot.n).toFixed(2), 'mea', (100 * tot.m / tot.n).toFixed(2));
