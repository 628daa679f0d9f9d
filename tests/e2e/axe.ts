import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const SOURCE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Violation { id: string; impact: string | null; nodes: { html: string }[] }

/** Serious and critical violations of WCAG 2.2 A and AA on the page as it stands, one line each. */
export async function seriousViolations(page: Page): Promise<string[]> {
  // Evaluated, not added as a script: the page's content security policy stays in force.
  await page.evaluate(SOURCE);
  const violations = await page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run(context: Document, options: object): Promise<{ violations: Violation[] }> } };
    const found = await axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'] });
    return found.violations.map(({ id, impact, nodes }) => ({ id, impact, nodes: nodes.slice(0, 3).map(({ html }) => ({ html: html.slice(0, 160) })) }));
  });
  return violations.filter(({ impact }) => impact === 'serious' || impact === 'critical').map(({ id, impact, nodes }) => `${impact} ${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
}
