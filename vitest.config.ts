import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    // Two cores are the smallest machine this has to pass on; each file may start a browser or a database, and many wait for one for a good part of their time.
    maxWorkers: 3,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    globalSetup: ['tests/support/globalSetup.ts'],
  },
});
