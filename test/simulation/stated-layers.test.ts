/**
 * Panels of known clear, each told of in a different way: how often the clear on the thinnest 5 % is
 * under the 5 % quantile that was stated of it. As assumed: clear 42 ± 6 over 70 ± 10 over the points of
 * all panels, √12.5 of each within a panel; of one car's panels the means differ by an SD of 3.
 */
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import type { StatedLayer } from '../../src/film/film-model.ts';
import { NO_ZINC, thinClear } from '../../src/film/limits/thin-clear.ts';
import { filmModel } from '../../src/formats/models.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';

const PANELS = 6000;
const SEED = 909;
const WITHIN = Math.sqrt(12.5);
const POINTS = 5;
const Z_05 = 1.6448536;

type Told = { readonly clear: StatedLayer | null; readonly under: StatedLayer | null };
type Truth = {
  readonly clear: number;
  readonly clearOfCar: number;
  readonly under: number;
  readonly taken: number;
};

/** Share of panels whose clear on the thinnest 5 % is under the quantile stated for it. */
function shareUnder(tell: (truth: Truth, error: () => number) => Told, takenSd = 0): number {
  const random = seededRandom(SEED);
  const z = (): number => normal(random);
  let under = 0;
  for (let i = 0; i < PANELS; i += 1) {
    const clearOfCar = 42 + Math.sqrt(36 - 12.5 - 9) * z();
    const taken = 3 + takenSd * z();
    const truth = {
      clearOfCar,
      clear: clearOfCar + 3 * z() - taken,
      under: 70 + Math.sqrt(100 - 12.5) * z(),
      taken,
    };
    const calibration = (2 * random() - 1) * (1 + 0.02 * 112);
    const sampling = (5 / Math.sqrt(POINTS)) * z();
    const { clear, under: below } = tell(truth, z);
    const estimate = thinClear(
      {
        mean: micrometres(truth.clear + truth.under + calibration + sampling),
        count: POINTS,
        spread: { sd: micrometres(5), dof: 1e9 },
        calibration: micrometres((1 + 0.02 * 112) / Math.sqrt(3)),
        taken: { mean: micrometres(3), sd: micrometres(takenSd) },
      },
      {
        ...filmModel.layers.clearOverBase,
        statedClear: clear,
        statedUnder: below,
        zinc: NO_ZINC,
        panelToPanel: filmModel.stated.panelToPanel,
      },
      filmModel.topcoat,
    );
    if (truth.clear - Z_05 * WITHIN < estimate.mean - Z_05 * estimate.sd) under += 1;
  }
  return under / PANELS;
}

const layer = (mean: number, sd: number, of: StatedLayer['of']): StatedLayer => ({
  mean: micrometres(mean),
  sd: micrometres(sd),
  of,
});

/** Three standard errors of a share of 5 % among so many. */
const TOLERANCE = 3 * Math.sqrt((0.05 * 0.95) / PANELS);

describe('the clear that is stated of a panel is under its 5 % quantile on no more than 5 % of panels', () => {
  it.each<[string, number, Parameters<typeof shareUnder>[0]]>([
    ['by the total alone', 0, () => ({ clear: null, under: null })],
    ['with what was taken known to ± 2 µm', 2, () => ({ clear: null, under: null })],
    [
      'with its clear measured to ± 2 µm',
      0,
      ({ clear }, z) => ({ clear: layer(clear + 2 * z(), 2, 'panel'), under: null }),
    ],
    [
      'with its car’s clear known to ± 2 µm',
      0,
      ({ clearOfCar }, z) => ({ clear: layer(clearOfCar + 2 * z(), 2, 'car'), under: null }),
    ],
    [
      'with what lies under it known to ± 4 µm',
      0,
      ({ under }, z) => ({ clear: null, under: layer(under + 4 * z(), 4, 'panel') }),
    ],
    [
      'with both',
      0,
      ({ clear, under }, z) => ({
        clear: layer(clear + 3 * z(), 3, 'panel'),
        under: layer(under + 4 * z(), 4, 'panel'),
      }),
    ],
  ])('%s', (_, takenSd, tell) => {
    const share = shareUnder(tell, takenSd);
    expect(share).toBeLessThanOrEqual(0.05 + TOLERANCE);
    expect(share).toBeGreaterThan(0.01);
  });

  it('and is so on many more where the statement is worse than it says', () => {
    const share = shareUnder(({ under }, z) => ({
      clear: null,
      under: layer(under + 12 * z(), 4, 'panel'),
    }));
    expect(share).toBeGreaterThan(0.1);
  });
});
