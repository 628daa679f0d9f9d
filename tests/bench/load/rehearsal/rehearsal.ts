import { randomUUID } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { LogEntry } from '../../../../core/agreement/event.ts';
import { startBrowser } from '../../../support/browser.ts';
import { chance } from '../../../support/chance.ts';
import { longPart } from '../../../support/longPart.ts';
import { partXml } from '../../../support/partXml.ts';
import { clock, startChild } from '../child.ts';
import { furnishSection, layParts, type FurnishedSection, type Player } from '../furnish.ts';
import { at, median, say } from '../measured.ts';
import { importedPart } from '../opening/importedPart.ts';
import type { WatchedPage } from './page.ts';
import { watchPage } from './page.ts';
import type { Desk, Played } from './players.ts';
import type { Servers } from './servers.ts';

const SECTIONS = Number(process.env.BOWLINE_SECTIONS ?? 60);
const SEATS = 16;
const SECONDS = Number(process.env.BOWLINE_SECONDS ?? 60);
const SEED = Number(process.env.BOWLINE_SEED ?? 4640);
const MEASURES = 60;
const PROCESSES = 2;
/** Sections at which a real page sits beside the simulated players. */
const PAGES = 2;
/** One mark at a time for the page to draw. Chosen, not measured. */
const BETWEEN_DRAWN = 1500;

interface Laid extends FurnishedSection {
  part: string;
}

/** Seconds of processor time a process has used. */
function processorSeconds(pid: number): number {
  const fields = readFileSync(`/proc/${pid}/stat`, 'utf8').split(') ')[1]!.split(' ');
  return (Number(fields[11]) + Number(fields[12])) / 100;
}
const residentBytes = (pid: number): number => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))![1]) * 1024;

/** Asked until it is answered, under one id, as the page does it. */
async function operate(address: string, { cookie }: Player, part: string, name: string, input: unknown): Promise<LogEntry> {
  const operation = randomUUID();
  for (;;) {
    const reply = await fetch(`${address}/api/parts/${part}/operations/${name}`, { method: 'POST', headers: { cookie, 'content-type': 'application/json' }, body: JSON.stringify({ operation, input }) });
    const said = (await reply.json()) as { entry: LogEntry };
    if (reply.ok) return said.entry;
    if (reply.status !== 503) throw new Error(`${name}: ${reply.status} ${JSON.stringify(said)}`);
    await new Promise((resolve) => setTimeout(resolve, 300));
  }
}

/** The principal inks in one finger after another where the page shows it; milliseconds from each row's time at the server until it is painted. */
async function inkAndSee(address: string, { players, part }: Laid, page: WatchedPage, measureOf: ReadonlyMap<string, number>): Promise<{ times: number[]; unseen: number }> {
  const inked = new Map<string, number>();
  const end = performance.now() + SECONDS * 1000;
  while (performance.now() < end) {
    const note = (await page.notes()).find((one) => measureOf.has(one) && !inked.has(one));
    if (!note) break;
    const [proposal, measure] = [randomUUID(), measureOf.get(note)!];
    await operate(address, players[0]!, part, 'propose', { id: proposal, from: measure, to: measure, seats: 'all', why: 'As we just played it.', marks: [{ note, value: { kind: 'finger', finger: 2 } }] });
    const { at: written } = await operate(address, players[0]!, part, 'adopt', { proposal, revision: 1, why: '' });
    inked.set(note, Date.parse(written));
    await new Promise((resolve) => setTimeout(resolve, BETWEEN_DRAWN));
  }
  const drawn = await page.drawn();
  const times = [...inked].flatMap(([note, written]) => (drawn.has(note) ? [drawn.get(note)! - written] : []));
  return { times, unseen: inked.size - times.length };
}

/** Sixty sections of sixteen at rehearsal pace, on one server process or several. */
export async function rehearse(open: () => Promise<Servers>): Promise<void> {
  const servers = await open();
  const browser = await startBrowser();
  const children = Array.from({ length: PROCESSES }, () => startChild('rehearsal/players.ts'));
  try {
    const text = partXml(longPart(MEASURES, chance(SEED)), 'Rehearsal');
    const music = importedPart(text);
    const sections: Laid[] = [];
    for (let nth = 0; nth < SECTIONS; nth += 1) {
      const section = await furnishSection(servers.store, `Section ${nth + 1}`, SEATS);
      sections.push({ ...section, part: (await layParts(servers.store, section, [music], text))[0]! });
    }
    const addressOf = (nth: number) => servers.addresses[nth % servers.addresses.length]!;
    const before = servers.pids.map(residentBytes);
    // Whoever reads from a real page is the last of their section and is not simulated.
    const desks = sections.map(({ part, players }, section): Desk => ({ section, part, players: players.slice(0, section < PAGES ? -1 : undefined).map((player, nth) => ({ ...player, leads: nth === 0, address: addressOf(section + nth) })) }));
    await Promise.all(children.map((child, which) => child.ask({ open: desks.filter(({ section }) => section % PROCESSES === which) })));
    const pages = await Promise.all(sections.slice(0, PAGES).map(({ players, part }, nth) => watchPage(browser, addressOf(nth + 1), players.at(-1)!, part)));
    const after = servers.pids.map(residentBytes);
    const connections = desks.reduce((sum, { players }) => sum + players.length, PAGES);
    say(`${SECTIONS} sections of ${SEATS}, ${servers.addresses.length} server ${servers.addresses.length === 1 ? 'process' : 'processes with Redis'}, ${SECONDS} s, seed ${SEED}; ${connections - PAGES} players with the page's own program in ${PROCESSES} processes, ${PAGES} real pages`);
    say(`memory of the servers: ${after.map((bytes, nth) => `${(before[nth]! / 2 ** 20).toFixed(0)} -> ${(bytes / 2 ** 20).toFixed(0)} MiB`).join(', ')}: ${((after.reduce((a, b) => a + b) - before.reduce((a, b) => a + b)) / connections / 1024).toFixed(0)} KiB a connection, its share of a loaded part among it`);
    const used = servers.pids.map(processorSeconds);
    const begin = clock() + 1000;
    const measureOf = new Map(music.measures.flatMap(({ ordinal, notes }) => notes.filter(({ rest }) => !rest).map(({ id }): [string, number] => [id, ordinal])));
    const [played, seen] = await Promise.all([
      Promise.all(children.map((child) => child.ask<Played>({ play: { from: begin, seconds: SECONDS, seed: SEED } }))),
      Promise.all(pages.map((page, nth) => inkAndSee(addressOf(nth), sections[nth]!, page, measureOf))),
    ]);
    const busy = servers.pids.map((pid, nth) => (processorSeconds(pid) - used[nth]!) / SECONDS);
    const heads = Object.fromEntries(await servers.store.log.heads(sections.map(({ part }) => part)));
    await Promise.all(children.map((child) => child.ask({ end: heads })));
    const latencies = played.flatMap((one) => one.latencies);
    const drawn = seen.flatMap(({ times }) => times);
    const written = played.reduce((sum, one) => sum + one.written, 0);
    say(`${written} operations, ${(written / SECONDS).toFixed(1)} a second, ${played.reduce((sum, one) => sum + one.refused, 0)} of them refused; processor of the servers ${busy.map((share) => `${(100 * share).toFixed(0)} %`).join(', ')}; at the end every client has its whole log`);
    const of = (values: number[]) => `median ${median(values).toFixed(0)}, p95 ${at(values, 0.95).toFixed(0)}, p99 ${at(values, 0.99).toFixed(0)}, most ${at(values, 1).toFixed(0)} ms (${values.length})`;
    say(`from the row's time at the server to a client's state: ${of(latencies)}`);
    say(`from the row's time at the server to the mark painted in a page: ${of(drawn)}, ${seen.reduce((sum, { unseen }) => sum + unseen, 0)} not seen`);
    for (const page of pages) await page.close();
  } finally {
    await Promise.all(children.map((child) => child.stop()));
    await browser.close();
    await servers.close();
  }
}
