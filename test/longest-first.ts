/**
 * The files that take longest come first, so that all processors have work to the end of the run: one that comes
 * last is waited for by the others. After them the order is the runner's own.
 */
import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Five seconds and more; what is new and slow comes in by the runner's own order, the larger file first. */
export const longest: readonly string[] = [
  'test/tasks/every-number-acts.test.ts',
  'test/simulation/compare.test.ts',
  'test/simulation/held-out-classes.test.ts',
  'test/cli/naughty-pages.test.ts',
  'test/tasks/canonical-csv.test.ts',
  'test/cases/cases.test.ts',
  'test/cli/batch/batch.test.ts',
  'test/intake/quick-and-slow.test.ts',
  'test/intake/layouts-round-trip.test.ts',
  'test/simulation/spots.test.ts',
  'test/intake/round-trip.test.ts',
  'test/simulation/cars-with-known-film.test.ts',
  'test/correction/whole-car.test.ts',
  'test/intake/number-styles.test.ts',
  'test/tasks/compare/compare-worked.test.ts',
  'test/simulation/planted-faults.test.ts',
  'test/film/others-gain-little.test.ts',
  'test/simulation/marks.test.ts',
  'test/correction/rates/learn-rates.test.ts',
];

export class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification): number => {
      const at = longest.indexOf(relative(this.ctx.config.root, moduleId));
      return at === -1 ? longest.length : at;
    };
    return (await super.sort(files)).sort((one, other) => place(one) - place(other));
  }
}
