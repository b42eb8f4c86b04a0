import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import { branchesReporter } from '../branches-by-room.ts';

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

const fewerCases = fileURLToPath(new URL('fewer-cases.ts', import.meta.url));

/** With `CASES=12` no property tries more than 12 cases. */
const capped: Plugin = {
  name: 'fewer-cases',
  enforce: 'pre',
  resolveId: (source, importer) =>
    source === 'fast-check' && importer !== fewerCases ? fewerCases : null,
};

export default defineConfig({
  plugins: process.env['CASES'] === undefined ? [] : [capped],
  test: {
    include: [`test/${room}/**/*.test.ts`],
    setupFiles: ['test/property-seed.ts'],
    sequence: { sequencer: QuickestFirst },
    // The runner has limits of its own; a busy machine fails no test.
    testTimeout: 600_000,
    hookTimeout: 600_000,
    // With `--coverage`: which branches of the room its own tests take.
    reporters: ['default', branchesReporter],
    coverage: { provider: 'v8', include: [`src/${room}/**/*.ts`], reporter: ['json'] },
  },
});
