/**
 * `ROOM=base npm run mutation`: which changes to a room's code its own tests would not see. `SAMPLE=20 SEED=1126`
 * tries one in twenty of them, whose share is an estimate with an interval.
 */
const room = process.env['ROOM'] ?? 'base';

/** Bundled by `npm run mutation`. */
const ownPlugins = new URL('../../node_modules/.cache/stryker-plugins.mjs', import.meta.url).href;

export default {
  mutate: [`src/${room}/**/*.ts`],
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner', ownPlugins],
  vitest: { configFile: 'test/mutation/vitest.config.ts', related: false },
  checkers: ['sample'],
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  reporters: ['progress-append-only', 'tally'],
  concurrency: Number(process.env['RUNNERS'] ?? 1),
  // A busy machine slows the tests: what is slow is not yet caught.
  timeoutFactor: 4,
  timeoutMS: 30_000,
  dryRunTimeoutMinutes: 30,
  tempDirName: 'node_modules/.cache/stryker',
};
