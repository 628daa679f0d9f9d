import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Readable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeBackup } from '../../../../server/database/backup/file.ts';
import { putBack } from '../../../../server/database/backup/putBack.ts';
import { backupLines } from '../../../../server/database/backup/take.ts';
import { startCluster, type Cluster } from '../../../../server/database/cluster.ts';
import { DATABASE, OWNER } from '../../../../server/database/connection.ts';
import { migrate } from '../../../../server/database/migrate.ts';
import { createDatabase } from '../../../../server/database/roles.ts';
import { plainly } from '../../../../server/cli/backup.ts';
import { canLayDisks, laySmallDisk, type SmallDisk } from '../../../support/smallDisk.ts';
import { linesOf, migrationsOf } from '../earlier/states.ts';

const STATE = 'carried';

describe.skipIf(!canLayDisks())('a full disk (root alone can try this)', { timeout: 240_000 }, () => {
  let disk: SmallDisk;
  let cluster: Cluster;
  beforeAll(async () => {
    disk = laySmallDisk(160);
    cluster = await startCluster({ folder: join(disk.folder, 'data'), settings: ['fsync=off'] });
    await createDatabase(cluster);
    await migrate(cluster.connection(OWNER, DATABASE), undefined, migrationsOf(STATE));
  });
  afterAll(async () => {
    await cluster.stop();
    disk.remove();
  });

  it('takes no backup, says that there is no room for it, and leaves the one that was there', async () => {
    const folder = disk.folder;
    const path = join(folder, 'whole.bowline');
    writeFileSync(path, 'the one of yesterday');
    disk.fill();
    await expect(writeBackup(path, Readable.from(linesOf(STATE)))).rejects.toThrow(`${path}: There is no room for the backup there, and nothing was kept of it.`);
    expect(readdirSync(folder).filter((name) => name.endsWith('.backup'))).toEqual([]);
    expect(existsSync(path)).toBe(true);
    disk.makeRoom();
  });

  it('takes nothing of a backup that is put back, says so, and takes all of it once there is room', async () => {
    const owner = cluster.connection(OWNER, DATABASE);
    const back = () => plainly(() => putBack(owner, Readable.from(linesOf(STATE))));
    disk.fill();
    await expect(back()).rejects.toThrow('The disk of the database is full. Nothing of the backup was put back or changed: make room, then do it again.');
    disk.makeRoom();
    const rows = await back();
    const lines: string[] = [];
    for await (const line of backupLines(owner, new Date(0))) lines.push(line);
    // The change to ensembles adds whom each person belongs to.
    expect(rows).toBe(linesOf(STATE).length - 2);
    expect(lines.length).toBeGreaterThan(rows);
  });
});
