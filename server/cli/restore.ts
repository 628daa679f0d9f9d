import { readBackup } from '../database/backup/file.ts';
import { putBack } from '../database/backup/putBack.ts';
import { reachDatabase } from '../database/reach.ts';
import { readSettings } from '../settings.ts';
import { readArguments } from './arguments.ts';
import { plainly } from './backup.ts';
import type { Command } from './command.ts';
import { printJson } from './output.ts';

export const restore: Command = {
  name: 'restore',
  usage: 'FILE.bowline',
  summary: 'Puts a backup into an empty library: a new BOWLINE_DATA folder, or an empty DATABASE_URL.',
  run: (args) =>
    plainly(async () => {
      const { file } = readArguments(restore, args, []);
      const reached = await reachDatabase(readSettings(process.env, []), 'fill');
      try {
        const rows = await putBack(reached.owner, readBackup(file));
        await reached.grant();
        await printJson({ rows });
      } finally {
        await reached.close();
      }
      return 0;
    }),
};
