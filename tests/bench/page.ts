import { longPart, anyMark } from '../support/longPart.ts';
import { startBrowser } from '../support/browser.ts';
import { chance } from '../support/chance.ts';
import type { Mark } from '../../core/music/mark.ts';
import type { PartView } from '../../core/agreement/wire/http.ts';
import { seatsFor } from '../../core/music/seat.ts';
import { serveBare } from './page/bare.ts';
import { bareShown, standShown } from './page/firstPage.ts';
import { layHouse, type Laid } from './page/house.ts';
import { pencilTimes } from './page/pencil.ts';
import { scrollTasks } from './page/scroll.ts';
import { openWindow } from './page/window.ts';
import { firstLoad } from './page/weight.ts';

const RUNS = Number(process.env.BOWLINE_RUNS ?? 5);
const PRESSES = Number(process.env.BOWLINE_PRESSES ?? 60);

const at = (values: readonly number[], share: number): number => [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))] ?? NaN;
const ms = (value: number): string => `${value.toFixed(0)} ms`;
const say = (line: string): void => console.log(line);

/** Marks of nine seats, two or three a measure, as the rules of the agreement take them. */
async function inkAll(laid: Laid, view: PartView): Promise<number> {
  const random = chance(11);
  const seats = seatsFor(9);
  let count = 0;
  for (let from = 1; from <= view.part.measures.length; from += 100) {
    const measures = Array.from({ length: Math.min(100, view.part.measures.length - from + 1) }, (_, i) => from + i);
    const taken = new Map<string, Mark>();
    for (let i = 0; i < 250; i += 1) {
      const mark = anyMark(view.part, seats, random, measures);
      if (mark && mark.value.kind !== 'none' && mark.seats?.length !== 0 && view.part.measures.some(({ notes }) => notes.some(({ id, rest }) => id === mark.note && !rest))) taken.set(mark.note, mark);
    }
    await laid.ink(view, [...taken.values()], from, measures.at(-1)!);
    count += taken.size;
  }
  return count;
}

/** `whole`: the number of measures, when every line has to be there before it goes on. */
async function standOf(browser: Awaited<ReturnType<typeof startBrowser>>, laid: Laid, part: string, whole?: number) {
  const { page, close } = await openWindow(browser, { storageState: laid.state });
  await page.goto(`${laid.house.origin}/stand/${part}`);
  await page.locator('main [data-note]').first().waitFor();
  if (whole) {
    await page.waitForFunction((measures) => document.querySelector(`[data-measure="${measures}"]`) && document.querySelectorAll('[data-system]').length === document.querySelectorAll('svg.system').length, whole, { polling: 500 });
    await page.waitForTimeout(3000);
  }
  return { page, close };
}

const browser = await startBrowser();
const laid = await layHouse(browser);
try {
  const weight = await firstLoad(browser, laid);
  say(`first load without the engraver: ${(weight.bytes / 1000).toFixed(0)} kB gzipped in ${weight.files.length} files (at most 350 kB)`);

  for (const measures of RUNS ? [300, 1000] : [1000]) {
    const view = await laid.lay(longPart(measures, chance(measures)), `Long ${measures}`);
    const text = await (await laid.request.get(`${laid.house.origin}/api/parts/${view.id}/engraving`)).text();
    const bare = await serveBare(() => text);
    const ours: number[] = [];
    const theirs: number[] = [];
    for (let run = 0; run < RUNS; run += 1) {
      theirs.push(await bareShown(browser, bare.origin));
      ours.push(await standShown(browser, laid, view.id));
    }
    bare.server.close();
    const ratio = at(ours.map((value, i) => value / theirs[i]!), 0.5);
    if (RUNS) say(`first page of ${measures} measures: ${ms(at(ours, 0.5))}, engraver alone ${ms(at(theirs, 0.5))}, ratio ${ratio.toFixed(2)} (median of ${RUNS} pairs; at most 1.30)`);
    if (measures !== 1000) continue;
    const marks = await inkAll(laid, view);
    for (const [when, whole] of [['while the rest is engraved', undefined], ['all of it there (at most 2.00)', measures]] as const) {
      const stand = await standOf(browser, laid, view.id, whole);
      const { toMark, frame } = await pencilTimes(stand.page, PRESSES);
      say(`key to mark, ${measures} measures, ${marks} marks of 9 seats: median ${ms(at(toMark, 0.5))}, p95 ${ms(at(toMark, 0.95))}, a frame ${frame.toFixed(1)} ms, p95 in frames ${(at(toMark, 0.95) / frame).toFixed(2)}: ${when}`);
      await stand.close();
    }
  }

  const long = await laid.lay(longPart(1400, chance(1400)), 'Long 1400');
  const stand = await standOf(browser, laid, long.id, 1400);
  const { tasks, frames } = await scrollTasks(stand.page);
  say(`scrolling 1,400 measures: ${tasks.length} tasks over 50 ms${tasks.length ? `, longest ${ms(Math.max(...tasks))}` : ''}; frames median ${at(frames, 0.5).toFixed(1)} ms, p99 ${at(frames, 0.99).toFixed(1)} ms`);
  await stand.close();
} finally {
  await browser.close();
  await laid.house.stop();
}
