import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { calibrationUncertainty } from '../../src/film/gauge/calibration.ts';
import {
  ceilingAllowance,
  clearAllowance,
  clearRisk,
  removalQuantile,
} from '../../src/film/limits/removal-risk.ts';
import {
  thinClear as fromLayers,
  NO_ZINC,
  type TotalFilm,
} from '../../src/film/limits/thin-clear.ts';
import { filmModel } from '../../src/formats/models.ts';
import { evenly } from '../evenly.ts';
import { gridRisk } from './grid-risk.ts';

/** The project's own check value: x̄ = 112, s̃ = 5.3, n = 5, ν = 10, nothing taken before. */
const checked = {
  mean: micrometres(112),
  count: 5,
  spread: { sd: micrometres(5.3), dof: 10 },
  calibration: calibrationUncertainty(micrometres(112), filmModel.measurement),
  taken: { mean: micrometres(0), sd: micrometres(0) },
};
const clearOverBase = {
  ...filmModel.layers.clearOverBase,
  statedClear: null,
  statedUnder: null,
  zinc: NO_ZINC,
  panelToPanel: filmModel.stated.panelToPanel,
};
const thinClear = (film: TotalFilm, layers: typeof clearOverBase) =>
  fromLayers(film, layers, filmModel.topcoat);

describe('the clear on the thinnest 5 % of a panel', () => {
  it('reproduces the worked example 35.835 ± 4.443 µm (own derivation, checked by simulation)', () => {
    const clear = thinClear(checked, clearOverBase);
    // The printed mean was worked out with z = 1.645; the exact quantile is 1.6448536.
    expect(Math.abs(clear.mean - 35.835)).toBeLessThan(1e-3);
    expect(clear.sd).toBeCloseTo(4.443, 3);
  });

  it('puts half of the spread over the panel down to the clear: v = 14.045 µm² of 5.3² µm²', () => {
    // At x̄ as expected only −1.645·√v stands beside the mean of 42.
    const v = ((42 - thinClear(checked, clearOverBase).mean) / 1.6448536) ** 2;
    expect(v).toBeCloseTo(14.045, 4);
  });

  it('takes the share g = .18761 of what a thin total is missing off the clear', () => {
    const thin = { ...checked, mean: micrometres(102) };
    const drop = thinClear(checked, clearOverBase).mean - thinClear(thin, clearOverBase).mean;
    expect(drop / 10).toBeCloseTo(0.18761, 5);
  });

  it('gives a calibration of (1 + 2 % of 112)/√3 = 1.8706 µm (GUM 4.3.7)', () => {
    expect(checked.calibration).toBeCloseTo((1 + 0.02 * 112) / Math.sqrt(3), 12);
  });

  it('is never raised by a thick total', () => {
    fc.assert(
      fc.property(evenly(112, 190), (mean) => {
        const thick = thinClear({ ...checked, mean: micrometres(mean) }, clearOverBase);
        expect(thick.mean).toBe(thinClear(checked, clearOverBase).mean);
      }),
    );
  });

  it('caps the spread put down to the clear at 60 % of the clear’s own variance', () => {
    const uneven = { ...checked, spread: { sd: micrometres(20), dof: 10 } };
    // v = min(200, .6·36) = 21.6; 42 − 1.6448536·√21.6 = 34.3554
    expect(thinClear(uneven, clearOverBase).mean).toBeCloseTo(34.3554, 4);
  });

  it('never lets what lies under the clear vary less between panels than a third of its variance', () => {
    const uneven = { ...checked, mean: micrometres(102), spread: { sd: micrometres(20), dof: 10 } };
    // A = 36 − 21.6 = 14.4; B = max(100 − (400 − 21.6), 100/3) = 33.3333; s̃²/n = 80; u² at 102 = 3.0805
    const u = (1 + 0.02 * 112) / Math.sqrt(3);
    const g = 14.4 / (14.4 + 100 / 3 + u ** 2 + 80);
    expect(thinClear(uneven, clearOverBase).mean).toBeCloseTo(
      42 - 10 * g - 1.6448536 * Math.sqrt(21.6),
      5,
    );
    expect(thinClear(uneven, clearOverBase).sd).toBeCloseTo(
      Math.sqrt(14.4 * (1 - g) + (1.6448536 ** 2 * 21.6) / 20),
      6,
    );
  });

  it('falls by the whole of what earlier work took where the total is as thick as ever', () => {
    const worn = thinClear(
      { ...checked, taken: { mean: micrometres(3), sd: micrometres(0) } },
      clearOverBase,
    );
    expect(worn.mean).toBeCloseTo(thinClear(checked, clearOverBase).mean - 3, 12);
  });

  it('does not count twice what earlier work took and the total shows as missing', () => {
    const taken = { mean: micrometres(3), sd: micrometres(0) };
    const thinner = thinClear({ ...checked, taken, mean: micrometres(109) }, clearOverBase);
    // 109 is just what is expected after 3 µm: nothing more is missing (u_cal alone differs).
    expect(thinner.mean).toBeCloseTo(thinClear(checked, clearOverBase).mean - 3, 12);
  });
});

describe('what the limits allow', () => {
  const clear = thinClear(checked, clearOverBase);

  // The project's own check values at ln-SD .552 and risk 5 %; floors: 1 mil = 25.4, and 22.3.
  it.each([
    [25.4, 2.255],
    [22.3, 4.032],
  ])('keeps the clear over %d µm with a median removal of %d µm', (floor, budget) => {
    const terms = { risk: 0.05, logSd: 0.552 };
    expect(clearAllowance(clear, micrometres(floor), terms)).toBeCloseTo(budget, 2);
  });

  it('uses up the whole of the risk it was given', () => {
    const terms = { risk: 0.05, logSd: 0.552 };
    const median = clearAllowance(clear, micrometres(22.3), terms);
    expect(clearRisk(clear, micrometres(22.3), { median, logSd: 0.552 })).toBeCloseTo(0.05, 8);
  });

  it('is never more at a lower risk, of clear or over the panel’s life', () => {
    fc.assert(
      fc.property(
        fc.record({
          mean: evenly(20, 60),
          sd: evenly(1, 10),
          logSd: evenly(0.05, 1),
          risks: fc.tuple(evenly(0.001, 0.5), evenly(0.001, 0.5)),
        }),
        ({ mean, sd, logSd, risks }) => {
          const [low, high] = [Math.min(...risks), Math.max(...risks)];
          const film = { mean: micrometres(mean), sd: micrometres(sd) };
          const at = (risk: number) => clearAllowance(film, micrometres(22.3), { risk, logSd });
          expect(at(low)).toBeLessThanOrEqual(at(high) + 1e-6);
          expect(ceilingAllowance(12.7, { risk: low, logSd })).toBeLessThanOrEqual(
            ceilingAllowance(12.7, { risk: high, logSd }),
          );
        },
      ),
    );
  });

  it('is nothing where the risk is over the mark before any work', () => {
    const bare = { mean: micrometres(24), sd: micrometres(4) };
    expect(clearAllowance(bare, micrometres(22.3), { risk: 0.05, logSd: 0.552 })).toBe(0);
  });

  it('agrees with a plain sum over a fine grid of removals', () => {
    fc.assert(
      fc.property(
        evenly(25, 50),
        evenly(1, 6),
        evenly(0, 12),
        evenly(0, 0.8),
        (mean, sd, median, logSd) => {
          const own = gridRisk(mean, sd, 22.3, median, logSd);
          const film = { mean: micrometres(mean), sd: micrometres(sd) };
          const risk = clearRisk(film, micrometres(22.3), { median: micrometres(median), logSd });
          expect(Math.abs(risk - own)).toBeLessThan(2e-5);
        },
      ),
    );
  });

  it('agrees also where the clear is known to a micrometre and the removal is not', () => {
    // Steep in the removal: the case a coarser rule got wrong by 2e-5.
    const film = { mean: micrometres(35.741214390339465), sd: micrometres(1) };
    const removal = { median: micrometres(11.921684265096118), logSd: 0.8 };
    const own = gridRisk(film.mean, film.sd, 22.3, removal.median, removal.logSd);
    expect(Math.abs(clearRisk(film, micrometres(22.3), removal) - own)).toBeLessThan(1e-6);
  });

  it('leaves a limit alone that is reached with just the stated chance', () => {
    const allowed = ceilingAllowance(12.7, { risk: 0.05, logSd: 0.552 });
    // 12.7·exp(−1.6449·.552) = 5.123
    expect(allowed).toBeCloseTo(12.7 * Math.exp(-1.6448536 * 0.552), 6);
    expect(removalQuantile({ median: allowed, logSd: 0.552 }, 0.95)).toBeCloseTo(12.7, 9);
  });

  it('allows nothing under a ceiling already passed', () => {
    expect(ceilingAllowance(-3, { risk: 0.05, logSd: 0.552 })).toBe(0);
  });

  it('has no quantiles other than 0 for no removal', () => {
    expect(removalQuantile({ median: micrometres(0), logSd: 0.552 }, 0.95)).toBe(0);
  });
});
