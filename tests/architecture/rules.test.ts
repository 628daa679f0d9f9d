import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { RULES } from '../../core/check/registry.ts';
import { rulePages } from '../../core/check/rulePages.ts';
import * as instruments from '../../core/instruments/instrumentNamed.ts';

const root = join(import.meta.dirname, '../..');
const folder = join(root, 'core/check/rules');
const paths = readdirSync(folder, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap((family) => readdirSync(join(folder, family.name)).map((file) => `${family.name}/${file.replace(/\.ts$/, '')}`))
  .sort();
const SOURCES = new Set([...readFileSync(join(root, 'core/SOURCES.md'), 'utf8').matchAll(/^\| `([\w-]+)` \|/gm)].map((match) => match[1]!));

describe('the rules of the checker', () => {
  it('every rule file has its line in the registry, and its path is its id', () => {
    expect(paths.length).toBeGreaterThan(0);
    expect(RULES.map((rule) => rule.id).sort()).toEqual(paths);
  });

  it('every rule has a test that tables what holds and what is broken', () => {
    const untested = paths.filter((path) => {
      const test = join(root, `tests/core/check/${path}.test.ts`);
      return !existsSync(test) || !readFileSync(test, 'utf8').includes(`core/check/rules/${path}.ts`) || !readFileSync(test, 'utf8').includes('ruleTable(');
    });
    expect(untested).toEqual([]);
  });

  it('every source a rule or an instrument names stands in core/SOURCES.md', () => {
    const named = [...RULES.flatMap((rule) => rule.source), ...(['violin', 'viola', 'cello', 'double-bass'] as const).flatMap((name) => instruments.instrumentNamed(name).sources)];
    expect(named.filter((key) => !SOURCES.has(key))).toEqual([]);
    expect(RULES.filter((rule) => rule.source.length === 0)).toEqual([]);
  });

  it('every rule says what holds and why in whole sentences, and every message names the place', () => {
    for (const page of rulePages()) {
      expect(page.summary).toMatch(/^[A-Z].*\.$/);
      expect(page.why).toMatch(/^[A-Z].*\.$/);
      for (const message of Object.values(page.messages)) expect(message).toMatch(/\{where\}.*\.$/);
    }
  });
});
