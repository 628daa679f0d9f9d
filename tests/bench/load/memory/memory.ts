import { chance } from '../../../support/chance.ts';
import { longPart } from '../../../support/longPart.ts';
import { startChild } from '../child.ts';
import { furnishSection, layParts } from '../furnish.ts';
import { openInstallation } from '../installation.ts';
import { say } from '../measured.ts';
import { fillLog } from '../opening/fill.ts';

const PARTS = 21;
const MEASURES = 300;
const ROWS = [0, 200];
const SEED = 7;

/** What the server holds for a part that lies open. What it holds for a connection is told by `broadcast` and `rehearsal`. */
export async function memory(): Promise<void> {
  const installation = await openInstallation();
  try {
    const section = await furnishSection(installation.store, 'Memory', 16);
    const music = longPart(MEASURES, chance(SEED));
    for (const rows of ROWS) {
      const parts = await layParts(installation.store, section, Array.from({ length: PARTS }, () => music));
      if (rows) for (const part of parts) await fillLog(installation.store, section, part, music, rows, SEED);
      const child = startChild('memory/loaded.ts');
      const { bytes } = await child.ask<{ bytes: number }>({ ways: installation.ways, parts });
      await child.stop();
      say(`memory of a loaded part of ${MEASURES} measures (${music.measures.reduce((sum, { notes }) => sum + notes.length, 0)} notes) with ${rows} rows in its log: ${(bytes / 1024).toFixed(0)} KiB (mean of ${PARTS - 1})`);
    }
  } finally {
    await installation.close();
  }
}
