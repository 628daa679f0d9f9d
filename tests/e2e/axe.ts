import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const SOURCE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Violation { id: string; impact: string | null; nodes: { html: string; target: string[]; failureSummary?: string }[] }

const LEVELS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
/** What another light can break. */
const COLOURS = ['color-contrast', 'link-in-text-block'];

/** Violations of WCAG 2.2 A and AA on the page as it stands, one line each; of what hangs on colours alone where nothing else has changed. */
export async function violations(page: Page, what: 'all' | 'colours' = 'all'): Promise<string[]> {
  // Evaluated, not added as a script: the page's content security policy stays in force.
  // The engraver's drawing is hidden from readers, and is thousands of elements: it is put aside meanwhile; what stands over it is not. Lines of the part out of view are as those in view.
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(SOURCE);
  const found = await page.evaluate(async (only) => {
    const { axe } = window as unknown as { axe: { run(context: object, options: object): Promise<{ violations: Violation[] }> } };
    const far = [...document.querySelectorAll('.system-row')].filter((row) => row.getBoundingClientRect().top > innerHeight || row.getBoundingClientRect().bottom < 0);
    const drawings = [...document.querySelectorAll('g.sys')].map((drawing) => ({ drawing, inside: [...drawing.childNodes] }));
    for (const { drawing } of drawings) drawing.replaceChildren();
    // The page has no frames, and its styles are its own: nothing is fetched beforehand, and what passes need not be told.
    const { violations } = await axe.run({ exclude: ['g.sys', ...far] }, { runOnly: only, resultTypes: ['violations'], preload: false, iframes: false });
    for (const { drawing, inside } of drawings) drawing.replaceChildren(...inside);
    return violations.map(({ id, impact, nodes }) => ({ id, impact, nodes: nodes.slice(0, 3).map(({ html, target, failureSummary }) => ({ html: html.slice(0, 160), target, failureSummary })) }));
  }, what === 'all' ? LEVELS : { type: 'rule', values: COLOURS });
  return found.map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes.map(({ html, target, failureSummary }) => `${target.join(' ')} ${html} ${failureSummary?.split('\n').slice(1, 3).join(' ') ?? ''}`).join(' | ')}`);
}

/** Serious and critical ones of them. */
export const seriousViolations = async (page: Page): Promise<string[]> => (await violations(page)).filter((line) => /^(serious|critical) /.test(line));
