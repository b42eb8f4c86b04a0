import { relative } from 'node:path';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The tests of one room, in process: what a mutant of that room must not survive. */
const room = process.env['ROOM'] ?? 'base';

/** A mutant is done with at the first test that fails: those that take long come last. */
class QuickestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const took = ({ project, moduleId }: TestSpecification): number => {
      const key = `${project.name}:${relative(this.ctx.config.root, moduleId)}`;
      return this.ctx.cache.getFileTestResults(key)?.duration ?? 0;
    };
    return [...files].sort((one, other) => took(one) - took(other));
  }
}

export default defineConfig({
  test: {
    include: [`test/${room}/**/*.test.ts`],
    setupFiles: ['test/property-seed.ts'],
    sequence: { sequencer: QuickestFirst },
    // The runner has limits of its own; a busy machine fails no test.
    testTimeout: 600_000,
    hookTimeout: 600_000,
  },
});
