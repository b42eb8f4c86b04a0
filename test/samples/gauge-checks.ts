/** An invented gauge that reads a little high, checked on four shims before the work and after it. */
import { normal, seededRandom } from './seeded-random.ts';
import { lines } from './text-files.ts';

/** reading = offset + gain · thickness, a tenth of a micrometre shown; it holds still between the checks. */
export const checkedGauge = { seed: 1519, offset: 0.2, gain: 1.003, scatter: 0.3 } as const;

/** Thickness, and what its certificate states it may be off by (k = 2). */
const SHIMS = [
  [0, 0],
  [49.6, 0.5],
  [125.2, 0.7],
  [251, 1.2],
] as const;
const REPEATS = [1, 2, 3, 4, 5] as const;

export function gaugeChecks(): string {
  const random = seededRandom(checkedGauge.seed);
  const { offset, gain, scatter } = checkedGauge;
  const rows = (['before', 'after'] as const).flatMap((check) =>
    SHIMS.flatMap(([shim, uncertainty]) =>
      REPEATS.map((repeat) => {
        const shown = offset + gain * shim + scatter * normal(random);
        return [shim, uncertainty, (Math.round(10 * shown) / 10).toFixed(1), repeat, check].join(
          ',',
        );
      }),
    ),
  );
  return lines(['shim_um,shim_uncertainty_um,reading_um,repeat,check', ...rows]);
}
