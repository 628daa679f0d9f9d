/** Writes the SQL that leads from the migrations to schema.prisma: `npm run migration -- name_of_the_change`. Offline, development only. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { difference, MIGRATIONS } from './difference.ts';

const name = process.argv[2];
if (!name || !/^[a-z][a-z0-9_]*$/.test(name)) {
  console.error('Give the change a name of small letters and underscores: npm run migration -- add_desks');
  process.exit(2);
}
const sql = await difference();
if (!sql) {
  console.log('The migrations already lead to schema.prisma.');
  process.exit(0);
}
const time = new Date().toISOString().replace(/\D/g, '').slice(0, 14);
const folder = join(MIGRATIONS, `${time}_${name}`);
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'migration.sql'), sql);
console.log(`Wrote ${folder}/migration.sql. Read it before it is applied.`);
process.exit(0);
