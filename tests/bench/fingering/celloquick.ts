import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { celloPlaces } from '../../../core/fingering/celloPlaces.ts';
import { prepare } from '../../../core/fingering/prepare.ts';
import { cello } from '../../../core/instruments/cello.ts';
import { loadDuport } from './duport.ts';
import { lessonOf } from './lesson.ts';
import { best, requestFor, sharesOf } from './measures.ts';
import { train } from './train.ts';
import { fittedChain } from '../../../core/fingering/fit/chain.ts';
const duport = loadDuport(`${process.env.CORPUS_DIR}/fingering/cello-duport`);
const lessons = duport.map((p) => lessonOf(p, 1, (n) => celloPlaces(n.midi)));
let hit = 0, n = 0, h0 = 0;
const out: string[] = [];
duport.forEach((p, i) => {
  const f = `/tmp/cw_${process.env.TAG ?? ''}${p.name}.bin`;
  let w: Int8Array;
  if (existsSync(f)) w = new Int8Array(readFileSync(f)); else { w = train(lessons.filter((_, j) => j !== i), 1); writeFileSync(f, w); }
  const s = sharesOf(p, best(prepare(requestFor(cello, p, w))));
  const s0 = sharesOf(p, best(prepare(requestFor(cello, p, null))));
  hit += s.triple; n += s.notes; h0 += s0.triple; out.push(`${p.name} ${(100 * s.triple / s.notes).toFixed(0)}/${(100 * s0.triple / s.notes).toFixed(0)}`);
});
console.log(out.join(' '), 'ALL', (100 * hit / n).toFixed(2), 'hand', (100 * h0 / n).toFixed(2));
void fittedChain;
