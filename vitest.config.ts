import { configDefaults, defineConfig } from 'vitest/config';

/** Tests that need neither database nor browser: they share what they have read in. */
const PURE = ['tests/architecture/**/*.test.ts', 'tests/client/**/*.test.{ts,tsx}', 'tests/core/**/*.test.ts'];

export default defineConfig({
  test: {
    // Two cores are the smallest machine this has to pass on; each file may start a browser or a database, and many wait for one for a good part of their time.
    maxWorkers: 3,
    testTimeout: 60_000,
    hookTimeout: 120_000,
    projects: [
      { extends: true, test: { name: 'pure', include: PURE, isolate: false } },
      { extends: true, test: { name: 'whole', include: ['tests/**/*.test.{ts,tsx}'], exclude: [...configDefaults.exclude, ...PURE], globalSetup: ['tests/support/globalSetup.ts'] } },
    ],
  },
});
