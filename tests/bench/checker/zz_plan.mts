import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
import { chance } from '../../support/chance.ts';
import { FAULTS } from './faults.ts';
import { houseOf } from './house.ts';
import { marked, scores, SEATS } from './marked.ts';
const name = process.argv[3]!; const random = chance(1);
for await (const { file, parts } of scores()) { if (!new RegExp(process.argv[2]!).test(file)) continue;
  for (const part of parts) {
    const check = standingCheck({ part, seats: SEATS, settings: {} });
    const { marks, passages } = marked(part, (some) => check.findings(some));
    const planned = passages.flatMap((x) => x.marks); if (!planned.length && /change/.test(name)) continue;
    const house = houseOf(part, marks, passages);
    const clean = new Set(check.findings(marks).map((f) => f.rule + f.place + String(f.seats)));
    const fault = FAULTS.find((f) => f.name === name)!;
    for (let n = 0; n < 4; n++) { const p = fault.plant(house, random); if (!p) { console.log(file, part.name, 'none'); break; }
      const gone = new Set(p.removed ?? []);
      const fresh = check.findings([...marks.filter((m) => !gone.has(m)), ...p.added]).filter((f) => !clean.has(f.rule + f.place + String(f.seats)));
      const ok = fresh.some((f) => fault.says.includes(f.rule) && Math.abs(f.measure - house.measureOf.get(p.note)!) <= 2);
      console.log(file.slice(-20), part.name, ok ? 'found' : 'MISSED', house.measureOf.get(p.note), p.note, fresh.map((f) => f.rule + '@' + f.measure + (fault.says.includes(f.rule) || fault.also?.includes(f.rule) ? '' : ' !! ' + f.text)).join(', '));
      if (!ok || process.argv[4]) console.log('   removed', JSON.stringify(p.removed?.map((m) => [house.measureOf.get(m.note), m.note, m.value, m.seats])), 'added', JSON.stringify(p.added), '\n   all of seat', JSON.stringify(planned.filter((m) => m.seats && p.removed?.some((q) => String(q.seats) === String(m.seats))).map((m) => [house.measureOf.get(m.note), m.note, m.value, m.seats])));
    }
  } }
