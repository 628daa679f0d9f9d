/**
 * How much one installation carries, as ratios within one run: `npm run bench:load`, or some of it: `npm run bench:load -- commands broadcast`.
 */
import { cpus, release } from 'node:os';
import pg from 'pg/package.json' with { type: 'json' };
import socketIo from 'socket.io/package.json' with { type: 'json' };
import { broadcast } from './broadcast/broadcast.ts';
import { commands } from './commands/commands.ts';
import { opening } from './opening/opening.ts';
import { say } from './measured.ts';
import { memory } from './memory/memory.ts';
import { rehearse } from './rehearsal/rehearsal.ts';
import { openServers } from './rehearsal/servers.ts';

const PARTS: Record<string, () => Promise<void>> = { commands, broadcast, rehearsal: () => rehearse(() => openServers(1)), several: () => rehearse(() => openServers(3)), opening, memory };

const asked = process.argv.slice(2);
const unknown = asked.find((name) => !(name in PARTS));
if (unknown !== undefined) throw new Error(`There is no ${unknown} here, only ${Object.keys(PARTS).join(', ')}.`);
say(`Node ${process.version}, Linux ${release()}, ${cpus().length} cores, pg ${pg.version}, socket.io ${socketIo.version}`);
for (const name of asked.length ? asked : Object.keys(PARTS)) {
  const began = performance.now();
  await PARTS[name]!();
  say(`${name}: ${((performance.now() - began) / 1000).toFixed(0)} s\n`);
}
