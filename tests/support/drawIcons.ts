import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { startBrowser } from './browser.ts';

/** Makes the pictures of the icon from its drawing: `node --import tsx tests/support/drawIcons.ts`. */
const FOLDER = join(import.meta.dirname, '../../client/public');
const drawing = readFileSync(join(FOLDER, 'icon.svg'), 'utf8');
/** Telephones cut a circle or a drop out of a maskable icon: what matters lies within its middle four fifths. */
const roomy = drawing.replace('viewBox="0 0 100 100"', 'viewBox="-20 -20 140 140"');

const browser = await startBrowser();
for (const [name, size, svg] of [['icon-192', 192, drawing], ['icon-512', 512, drawing], ['icon-maskable-512', 512, roomy]] as const) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<body style="margin:0"><img style="display:block" width="${size}" height="${size}" src="data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}">`);
  await page.locator('img').evaluate((img) => (img as HTMLImageElement).decode());
  writeFileSync(join(FOLDER, `${name}.png`), await page.screenshot());
  await page.close();
}
await browser.close();
