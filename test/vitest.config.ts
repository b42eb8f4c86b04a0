import { defineConfig } from 'vitest/config';
import { branchesReporter } from './branches-by-room.ts';
import { importsOnce } from './imports-once.ts';
import { LongestFirst } from './longest-first.ts';

/** Where to write the counts of a run as JSON, for a caller that closes with them. */
const results = process.env['TEST_RESULTS'];

/** `--sequence.shuffle.files` asks for another order. */
const isShuffled = process.argv.some((word) => word.startsWith('--sequence.shuffle'));

export default defineConfig({
  plugins: [importsOnce],
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/property-seed.ts'],
    globalSetup: ['test/cli/build-once.ts'],
    testTimeout: 60_000,
    hookTimeout: 120_000,
    // The runner itself takes little: every processor runs tests.
    maxWorkers: '100%',
    // Loading the modules anew for each file took as long as a fifth of the tests. What is kept between calls
    // (base/kept.ts) follows from the question alone, so that no file can tell which ran before it.
    isolate: false,
    sequence: isShuffled ? {} : { sequencer: LongestFirst },
    reporters: [
      'default',
      branchesReporter,
      ...(results ? [['json', { outputFile: results }] satisfies [string, object]] : []),
    ],
    coverage: {
      provider: 'v8',
      // Rooms of the trade, by their own tests: of all rooms by all tests it takes as long as the tests.
      include: ['src/{base,film,correction,work,training}/**/*.ts'],
      reporter: ['text-summary', 'json-summary'],
    },
  },
});
