import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { check, counted, GUARANTEES } from '../server/history/checker/check.ts';
import { readRecord } from '../server/history/record/record.ts';
import { run } from '../server/history/several/run.ts';
import { lacks } from '../support/topology/programs.ts';

/**
 * Histories over real processes: three servers, Redis, PostgreSQL, workers, thirty people in two ensembles, and everything going wrong; then every guarantee is
 * checked. `npm run bench:history`, or `npm run bench:history -- <record>` to check a record again.
 * BOWLINE_HISTORY_MINUTES a seed (5), BOWLINE_HISTORY_SEEDS ("4640 4641 4642 4643 4644"), BOWLINE_HISTORY_RECORDS: a folder to keep the records and what
 * the servers said in, BOWLINE_HISTORY_ONLY: only faults whose name this matches.
 */
const MINUTES = Number(process.env.BOWLINE_HISTORY_MINUTES ?? 5);
const SEEDS = (process.env.BOWLINE_HISTORY_SEEDS ?? '4640 4641 4642 4643 4644').split(/\s+/).map(Number);
const SHOWN = 5;

interface Summary {
  acknowledged: number;
  faults: number;
  violations: number;
}

function judge(path: string, name: string): Summary {
  const history = readRecord(path);
  const { acknowledged, rows, refused, faults } = counted(history);
  const violations = check(history);
  const cutOffs = history.flatMap((one) => (one.k === 'cutOff' ? [one.ms] : [])).sort((a, b) => a - b);
  const sum = Object.values(faults).reduce((all, one) => all + one, 0);
  console.log(`${name}: ${acknowledged} operations acknowledged, ${rows} rows, ${refused} refused, ${sum} faults, ${violations.length} violations`);
  for (const [kind, count] of Object.entries(faults).sort(([a], [b]) => (a < b ? -1 : 1))) console.log(`  ${String(count).padStart(4)} ${kind}`);
  if (cutOffs.length) console.log(`  lines of people signed out closed after ${Math.round(cutOffs[cutOffs.length >> 1]!)} ms (median), ${Math.round(cutOffs.at(-1)!)} ms at most`);
  const jobs = history.flatMap((one) => (one.k === 'job' ? [one.told] : []));
  if (jobs.length) console.log(`  ${jobs.length} long jobs taken in, ${jobs.filter((told) => told === 'done').length} done`);
  for (const { id, says } of GUARANTEES) {
    const broken = violations.filter(({ guarantee }) => guarantee === id);
    if (broken.length === 0) continue;
    console.log(`  guarantee ${id}, ${says}: broken ${broken.length} times`);
    for (const { what, shown } of broken.slice(0, SHOWN)) console.log([`    ${what}`, ...shown.map((line) => `      ${JSON.stringify(line).slice(0, 600)}`)].join('\n'));
  }
  return { acknowledged, faults: sum, violations: violations.length };
}

async function make(seed: number): Promise<Summary> {
  const folder = mkdtempSync(join(tmpdir(), 'bowline-history-'));
  const kept = process.env.BOWLINE_HISTORY_RECORDS;
  const record = kept ? resolve(kept, `history-${seed}.jsonl`) : join(folder, `history-${seed}.jsonl`);
  const started = performance.now();
  const redis = !lacks('redis-server');
  if (!redis) console.log('redis-server is not installed: without Redis, and so without its faults. On Debian: apt-get install redis-server');
  console.log(`seed ${seed}, ${MINUTES} minutes`);
  try {
    await run({
      seed,
      seconds: MINUTES * 60,
      folder,
      record,
      servers: 3,
      workers: 2,
      redis,
      players: 15,
      roomfuls: 3,
      works: Number(process.env.BOWLINE_HISTORY_WORKS ?? 8),
      open: 6,
      pause: [20, 120],
      ahead: 4,
      blows: [1000, 2500],
      disk: 700,
      ...(process.env.BOWLINE_HISTORY_ONLY ? { only: new RegExp(process.env.BOWLINE_HISTORY_ONLY) } : {}),
      report: (line) => console.log(`  ${line}`),
    });
    const summary = judge(record, `seed ${seed}`);
    console.log(`  ${Math.round((performance.now() - started) / 1000)} s in all${kept ? `, record ${record}` : ''}`);
    return summary;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const [given] = process.argv.slice(2);
const sums: Summary[] = [];
if (given) sums.push(judge(given, given));
else for (const seed of SEEDS) sums.push(await make(seed));
const total = (of: (one: Summary) => number) => sums.reduce((all, one) => all + of(one), 0);
console.log(`in all: ${total((one) => one.acknowledged)} acknowledged, ${total((one) => one.faults)} faults, ${total((one) => one.violations)} violations`);
process.exitCode = total((one) => one.violations) === 0 ? 0 : 1;
