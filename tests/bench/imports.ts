/**
 * The whole corpus through a real server in one go, while somebody votes on another part: `CORPUS_DIR=... npx tsx tests/bench/imports.ts`. Prints what was imported and
 * what refused and why, the memory of the server over time, and how much the votes were slowed: before, meanwhile and afterwards in one run.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort, startServer } from '../support/serverProcess.ts';
import { caller, furnish } from '../server/history/library.ts';
import { followImports, sendAll } from './imports/followed.ts';
import { watchMemory } from './imports/memory.ts';
import { openVoting, summary } from './imports/votes.ts';

/** Votes alone before and after, one every `PACE_MS`. Chosen, not measured. */
const ALONE = 150;

const folder = mkdtempSync(join(tmpdir(), 'bowline-imports-'));
const port = await freePort();
const server = await startServer({ PORT: String(port), HOST: '127.0.0.1', BOWLINE_DATA: join(folder, 'data') });
try {
  const address = `http://127.0.0.1:${port}`;
  const { people, views } = await furnish(address, server.link('librarian'));
  const librarian = people.at(-1)!;
  const voting = await openVoting(address, people[1]!, views[1]![0]!);
  const programme = await caller(address, librarian.cookie)<{ id: string }>('POST', '/api/programmes', { title: 'Everything' });
  await voting.votes(ALONE / 3);
  const before = await voting.votes(ALONE);
  const memory = watchMemory(server.pid);
  const began = performance.now();
  const { times, result: ended } = await voting.during(async () => {
    const sent = await sendAll(address, librarian.cookie, programme.id);
    console.log(`${sent} files sent in ${((performance.now() - began) / 1000).toFixed(1)} s`);
    return followImports(address, librarian.cookie, memory.now);
  });
  const seconds = (performance.now() - began) / 1000;
  const peak = memory.stop();
  const after = await voting.votes(ALONE);
  const done = ended.filter(({ step }) => step === 'done');
  for (const { files, trouble } of ended.filter(({ step }) => step !== 'done')) console.log(`refused: ${files[0]!.fileName}: ${trouble?.code}: ${trouble?.text}`);
  console.log(`${ended.length} files in ${seconds.toFixed(0)} s: ${done.length} imported, ${ended.length - done.length} refused; ${done.reduce((sum, { answer }) => sum + answer!.work.parts.length, 0)} parts`);
  console.log(`memory of the server: ${peak.first} MB before, ${peak.quarters.join(', ')} MB at most in each quarter, ${peak.last} MB at the end, ${peak.peak} MB at most`);
  const alone = summary([...before, ...after]);
  const beside = summary(times);
  console.log(`votes alone: median ${alone.median.toFixed(1)} ms, p95 ${alone.p95.toFixed(1)} ms (${before.length + after.length}); meanwhile: median ${beside.median.toFixed(1)} ms, p95 ${beside.p95.toFixed(1)} ms (${times.length})`);
  console.log(`slowed: median ${(beside.median / alone.median).toFixed(2)}, p95 ${(beside.p95 / alone.p95).toFixed(2)} (at most 2.00)`);
} finally {
  server.kill('SIGTERM');
  await server.ended;
  rmSync(folder, { recursive: true, force: true });
}
