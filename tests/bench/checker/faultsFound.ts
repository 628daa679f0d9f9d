import type { Finding } from '../../../core/check/finding.ts';
import { standingCheck } from '../../../core/check/standing/standingCheck.ts';
import { chance } from '../../support/chance.ts';
import { FAULTS, type Trial } from './faults.ts';
import { plantAcross } from './faultsAcross.ts';
import { houseOf } from './house.ts';
import { marked, scores, SEATS } from './marked.ts';
import { CORPUS } from '../../support/corpus.ts';

/** Single faults planted one by one in parts the engine has marked: which are found, and what is said besides. */
if (!CORPUS) throw new Error('Set CORPUS_DIR to the folder that holds scores/.');
const [SEED, A_PART, LONGEST, EVERY] = [Number(process.argv[2] ?? 1), 2, 400, 2];
let seen = 0;
/** Measures from the fault within which a finding counts as being about it. */
const ABOUT = 2;

interface Tally {
  planted: number;
  found: number;
}
const byFault = new Map<string, Tally>();
const saidRight = new Map<string, number>();
const saidWrong = new Map<string, number>();
const add = (counts: Map<string, number>, key: string): void => void counts.set(key, (counts.get(key) ?? 0) + 1);
const keyOf = ({ rule, place, seats }: Finding): string => `${rule} ${place} ${String(seats)}`;

function judge({ name, says, also, measure }: Trial, before: readonly Finding[], after: readonly Finding[]): void {
  const known = new Set(before.map(keyOf));
  const fresh = after.filter((finding) => !known.has(keyOf(finding)));
  const near = (finding: Finding): boolean => Math.abs(finding.measure - measure) <= ABOUT;
  const tally = byFault.get(name) ?? { planted: 0, found: 0 };
  byFault.set(name, tally);
  tally.planted += 1;
  if (fresh.some((finding) => says.includes(finding.rule) && near(finding))) tally.found += 1;
  else if (process.env.BOWLINE_MISSED) console.log(`missed: ${name}, measure ${measure}; said: ${fresh.map(({ rule, measure: at }) => `${rule}@${at}`).join(', ')}`);
  for (const finding of fresh) {
    const right = (says.includes(finding.rule) || also.includes(finding.rule)) && (near(finding) || also.includes(finding.rule));
    add(right ? saidRight : saidWrong, finding.rule);
    if (!right && process.env.BOWLINE_MISSED) console.log(`besides: ${name}, measure ${measure}: ${finding.rule}@${finding.measure} ${finding.text}`);
  }
}

const random = chance(SEED);
for await (const { file, parts } of scores()) {
  for (const part of parts.filter(({ measures }) => measures.length <= LONGEST)) {
    seen += 1;
    if (seen % EVERY !== SEED % EVERY) continue;
    const check = standingCheck({ part, seats: SEATS, settings: {} });
    const { marks, passages } = marked(part, (some) => check.findings(some));
    const house = houseOf(part, marks, passages);
    const clean = check.findings(marks);
    for (const fault of FAULTS) {
      for (let n = 0; n < (fault.times ?? A_PART); n += 1) {
        const planted = fault.plant(house, random);
        if (!planted) break;
        const gone = new Set(planted.removed ?? []);
        const after = check.findings([...marks.filter((mark) => !gone.has(mark)), ...planted.added]);
        judge({ ...fault, also: fault.also ?? [], measure: house.measureOf.get(planted.note)! }, clean, after);
      }
    }
  }
  if (seen % EVERY === 0) plantAcross(parts.filter(({ measures }) => measures.length <= LONGEST), random, judge);
  process.stderr.write(`${file}\n`);
}

const percent = (part: number, whole: number): string => ((100 * part) / whole).toFixed(1).padStart(6);
let [planted, found] = [0, 0];
for (const [name, tally] of byFault) {
  planted += tally.planted;
  found += tally.found;
  console.log(`${name.padEnd(48)}${String(tally.planted).padStart(5)} planted${percent(tally.found, tally.planted)} % found`);
}
console.log(`${'all'.padEnd(48)}${String(planted).padStart(5)} planted${percent(found, planted)} % found (recall)`);
let [right, wrong] = [0, 0];
for (const rule of [...new Set([...saidRight.keys(), ...saidWrong.keys()])].sort()) {
  const [yes, no] = [saidRight.get(rule) ?? 0, saidWrong.get(rule) ?? 0];
  right += yes;
  wrong += no;
  console.log(`${rule.padEnd(48)}${String(yes + no).padStart(5)} said   ${percent(yes, yes + no)} % about the fault`);
}
console.log(`${'all'.padEnd(48)}${String(right + wrong).padStart(5)} said   ${percent(right, right + wrong)} % about the fault (precision)`);
