import type { Page } from 'playwright-core';
import type { Part } from '../../core/music/part.ts';
import { staffStep } from '../../core/music/pitch.ts';
import { quarters } from '../../core/music/time.ts';

interface Head { x: number; y: number; width: number; system: string; hit: { left: number; right: number; top: number; bottom: number } | null }

/** Where the engraver put the head of each note on the page, and where one can touch it. Waits until every system is drawn. */
async function headsOf(page: Page, ids: string[]): Promise<Record<string, Head>> {
  await page.waitForFunction((count) => new Set([...document.querySelectorAll('main .hits [data-note]')].map((area) => area.getAttribute('data-note'))).size >= count, ids.length, { timeout: 60_000 });
  return page.evaluate((wanted) => Object.fromEntries(wanted.flatMap((id) => {
    const head = document.getElementById(id)?.querySelector('.notehead');
    if (!head) return [];
    const { x, y, width, height } = head.getBoundingClientRect();
    const area = document.querySelector(`main .hits [data-note="${CSS.escape(id)}"]`)?.getBoundingClientRect();
    const hit = area ? { left: area.left, right: area.right, top: area.top, bottom: area.bottom } : null;
    return [[id, { x: x + width / 2, y: y + height / 2, width, system: head.closest('[data-system]')?.getAttribute('data-system') ?? '', hit }]];
  })), ids);
}

/** What is wrong with the engraving, note by note; nothing when all is in its place. */
export async function misplaced(page: Page, part: Part): Promise<string[]> {
  const measures = part.measures.map((measure) => ({ ...measure, notes: measure.notes.filter(({ rest, hidden, pitch }) => !rest && !hidden && pitch) }));
  const heads = await headsOf(page, measures.flatMap(({ notes }) => notes.map(({ id }) => id)));
  return measures.flatMap(({ number, notes }) => {
    const missing = notes.filter(({ id }) => !(heads[id]?.width)).map(({ id }) => `measure ${number}: note ${id} is not on the page`);
    if (missing.length) return missing;
    const wrong: string[] = [];
    for (const note of notes) {
      const head = heads[note.id]!;
      const { hit } = head;
      if (!hit || head.x < hit.left || head.x > hit.right || head.y < hit.top || head.y > hit.bottom) wrong.push(`measure ${number}: note ${note.id} cannot be touched where it stands`);
      for (const other of notes) {
        if (note.grace || other.grace) continue;
        const apart = quarters(other.onset) - quarters(note.onset);
        const to = heads[other.id]!;
        if (to.system !== head.system) wrong.push(`measure ${number} is on two systems`);
        if (apart > 0 && to.x <= head.x) wrong.push(`measure ${number}: note ${other.id} sounds later and stands before ${note.id}`);
        if (apart === 0 && Math.abs(to.x - head.x) > 2.2 * head.width) wrong.push(`measure ${number}: ${other.id} and ${note.id} sound together and stand apart`);
        if (staffStep(other.pitch!) > staffStep(note.pitch!) && to.y >= head.y) wrong.push(`measure ${number}: ${other.id} is higher and stands lower than ${note.id}`);
      }
    }
    return [...new Set(wrong)];
  });
}
