import { readFileSync } from 'node:fs';
import { prepare } from '../../../core/fingering/prepare.ts';
import { cello } from '../../../core/instruments/cello.ts';
import { loadDuport } from './duport.ts';
import { best, requestFor, sharesOf } from './measures.ts';
const duport = loadDuport(`${process.env.CORPUS_DIR}/fingering/cello-duport`);

import { HAND } from '../../../core/fingering/aims.ts';
const ws = duport.map((p) => new Int8Array(readFileSync(`/tmp/cw_${p.name}.bin`)));
const base = { ...HAND };
function run(name: string, change: Partial<typeof HAND>) {
  Object.assign(HAND, base, change);
  let hit = 0, n = 0;
  duport.forEach((p, i) => { const s = sharesOf(p, best(prepare(requestFor(cello, p, ws[i]!)))); hit += s.triple; n += s.notes; });
  console.log(name, (100 * hit / n).toFixed(2));
}
run('base', {});
for (const [k, v] of Object.entries(base)) { run(`${k} x0.4`, { [k]: v! * 0.4 }); run(`${k} x2.2`, { [k]: v! * 2.2 }); }
