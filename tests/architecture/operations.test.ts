import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { OPERATIONS } from '../../core/agreement/registry.ts';

const root = join(import.meta.dirname, '../..');

describe('operations', () => {
  const names = readdirSync(join(root, 'core/agreement/operations')).map((file) => file.replace(/\.ts$/, '')).sort();

  it('every operation file stands in the registry under its own name', () => {
    expect(Object.keys(OPERATIONS).sort()).toEqual(names);
    expect(Object.values(OPERATIONS).map((operation) => operation.name).sort()).toEqual(names);
  });

  it('every operation says in a sentence what it does and who may ask for it', () => {
    for (const operation of Object.values(OPERATIONS)) {
      expect(operation.summary).toMatch(/^[A-Z].{10,}\.$/);
      expect(operation.roles.length).toBeGreaterThan(0);
    }
  });
});
