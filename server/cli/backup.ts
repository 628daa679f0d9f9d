import { writeBackup } from '../database/backup/file.ts';
import { BackupRefused } from '../database/backup/format.ts';
import { backupLines } from '../database/backup/take.ts';
import { reachDatabase } from '../database/reach.ts';
import { Unstartable } from '../database/unstartable.ts';
import { readSettings } from '../settings.ts';
import { isFull } from '../store/unavailable.ts';
import { readArguments } from './arguments.ts';
import { BadInput, type Command } from './command.ts';
import { printJson } from './output.ts';

/** What is wrong with the place or the file is one sentence, like every other thing typed wrongly. */
export async function plainly(work: () => Promise<number>): Promise<number> {
  try {
    return await work();
  } catch (reason) {
    if (reason instanceof BackupRefused || reason instanceof Unstartable) throw new BadInput(reason.message);
    if (isFull(reason)) throw new BadInput('The disk of the database is full. Nothing of the backup was put back or changed: make room, then do it again.');
    const code = (reason as { code?: unknown }).code;
    if (typeof code === 'string' && /^(E[A-Z]+|\w{5})$/.test(code)) throw new BadInput(`The database cannot be reached (${code}). Check DATABASE_URL or BOWLINE_DATA, and that the database runs.`);
    throw reason;
  }
}

export const backup: Command = {
  name: 'backup',
  usage: 'OUT.bowline',
  summary: 'Writes everything the library holds, of one moment, to one file; Bowline may go on running.',
  run: (args) =>
    plainly(async () => {
      const { file } = readArguments(backup, args, []);
      const reached = await reachDatabase(readSettings(process.env, []), 'read');
      try {
        let rows = 0;
        await writeBackup(file, backupLines(reached.owner, new Date(), (count) => (rows = count)));
        await printJson({ out: file, rows });
      } finally {
        await reached.close();
      }
      return 0;
    }),
};
