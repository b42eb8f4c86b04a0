/** `ROOM=base npm run mutation`: which changes to a room's code its own tests would not see. */
const room = process.env['ROOM'] ?? 'base';

export default {
  mutate: [`src/${room}/**/*.ts`],
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: 'test/mutation/vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  ignoreStatic: true,
  reporters: ['clear-text', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false },
  concurrency: Number(process.env['RUNNERS'] ?? 1),
  timeoutMS: 10_000,
  tempDirName: 'node_modules/.cache/stryker',
};
