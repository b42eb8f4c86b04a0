import { defineConfig } from 'vitest/config';

/** The tests of one room, in process: what a mutant of that room must not survive. */
const room = process.env['ROOM'] ?? 'base';

export default defineConfig({
  test: {
    include: [`test/${room}/**/*.test.ts`],
    setupFiles: ['test/property-seed.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
