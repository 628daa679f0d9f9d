import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import requirements from './asvs/requirements.json' with { type: 'json' };

const root = join(import.meta.dirname, '../..');
const read = (path: string) => readFileSync(join(root, path), 'utf8');
const table = read('server/ASVS.md');

interface Row {
  id: string;
  level: string;
  asks: string;
  stands: string;
  where: string;
  shownBy: string;
}

const rows: Row[] = [...table.matchAll(/^\| (\d+\.\d+\.\d+) \| (\d) \| (.*?) \| (.*?) \| (.*?) \| (.*?) ?\|$/gm)].map(([, id, level, asks, stands, where, shownBy]) => ({ id: id!, level: level!, asks: asks!, stands: stands!, where: where!, shownBy: shownBy! }));
const STANDS = ['met', 'partly', 'NOT met', 'pending', 'does not apply'];

/** `tests/a.test.ts: "title"; ...` */
const shownBy = ({ shownBy: cell }: Row) => [...cell.matchAll(/(tests\/[\w./]+): "([^"]+)"/g)].map(([, path, title]) => ({ path: path!, title: title! }));

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return entry.name === 'prisma-client' ? [] : sources(path);
    return /\.tsx?$/.test(path) ? [path] : [];
  });
}

describe('the table of OWASP ASVS 5.0.0', () => {
  it('has every requirement of levels 1 and 2 once, at its level, and no other', () => {
    // 70 and 183: the standard's own count of its levels.
    expect([requirements.level1.length, requirements.level2.length]).toEqual([70, 183]);
    const asked = [...requirements.level1.map((id) => `${id} 1`), ...requirements.level2.map((id) => `${id} 2`)];
    expect(rows.map(({ id, level }) => `${id} ${level}`).sort()).toEqual(asked.sort());
  });

  it('says of each what it asks, how it stands and where or why', () => {
    expect(rows.filter(({ asks, stands, where }) => !STANDS.includes(stands) || asks.length < 4 || where.length < 4).map(({ id }) => id)).toEqual([]);
  });

  it('names only files that are there', () => {
    const named = rows.flatMap(({ id, where }) => [...where.matchAll(/(?:server|client|core|prisma|tests)\/[\w./-]*\w/g)].map(([path]) => ({ id, path })));
    expect(named.length).toBeGreaterThan(80);
    expect(named.filter(({ path }) => !existsSync(join(root, path)))).toEqual([]);
  });

  it('names only tests that are there, by their titles', () => {
    const named = rows.flatMap((row) => shownBy(row).map((one) => ({ id: row.id, ...one })));
    expect(named.length).toBeGreaterThan(100);
    expect(named.filter(({ path, title }) => !existsSync(join(root, path)) || !read(path).includes(title))).toEqual([]);
    expect(rows.filter((row) => row.shownBy !== '' && shownBy(row).length === 0).map(({ id }) => id)).toEqual([]);
  });

  it('counts itself rightly', () => {
    const counted = STANDS.map((stands) => `${stands} ${rows.filter((row) => row.stands === stands).length}`).join(', ');
    expect(table).toContain(`Of ${rows.length}: ${counted}.`);
  });

  it('has what is not met, or in part, told in the threat model', () => {
    const threats = read('server/THREATS.md');
    const open = rows.filter(({ stands }) => stands === 'NOT met').map(({ id }) => id);
    expect(open.filter((id) => !threats.includes(id))).toEqual([]);
  });
});

describe('what the table says of the sources', () => {
  const texts = ['server', 'core', 'client'].flatMap(sources).map((path) => ({ path, text: read(path) }));

  it('no weak hash is used', () => {
    expect(texts.filter(({ text }) => /createHash\(['"`](?!sha(256|384|512))/.test(text) || /legacy\.js|\bmd5\(|\bsha1\(/.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('no weak chance: the server takes nothing that is sent or kept from Math.random', () => {
    expect(texts.filter(({ path, text }) => /^server\/(http|store|socket|mail)\//.test(path) && text.includes('Math.random')).map(({ path }) => path)).toEqual([]);
  });
});
