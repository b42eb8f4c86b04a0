import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import {
  doubtOf,
  expectedCorrection,
  leastClearingMore,
  medianDepth,
} from '../../src/correction/defects.ts';
import { correctionModel } from '../../src/formats/models.ts';
import { UNTRIED_LOG_SD } from '../film/car-builder.ts';
import { defect } from './shop.ts';

const { correction } = correctionModel;
const depthScale = { mean: 0, sd: correction.depthScaleLogSd };
const removal = (median: number, logSd: number, withDepth = 0) => ({
  median: micrometres(median),
  logSd,
  withDepth,
});
const expected = (median: number, logSd: number, depth = 1.1): number =>
  expectedCorrection(removal(median, logSd), depth, depthScale, correction.depthLogSd);

/** The median removal at which the expected correction is 85 %, by bisection. */
function needFor85(logSd: number, scale = depthScale): number {
  let [low, high] = [0.1, 10];
  for (let i = 0; i < 60; i += 1) {
    const middle = (low + high) / 2;
    const share = expectedCorrection(removal(middle, logSd), 1.1, scale, correction.depthLogSd);
    if (share < 0.85) low = middle;
    else high = middle;
  }
  return low;
}

describe('the depth of a defect', () => {
  it('is its grade’s median', () => {
    expect([1, 2, 3, 4, 5].map((grade) => medianDepth(defect('swirl-marks', grade)))).toEqual([
      0.4, 0.7, 1.1, 1.7, 2.5,
    ]);
  });

  it('of water etching at grade 3 is 1.2 µm (Abo & Itoh 1992)', () => {
    expect(medianDepth(defect('water-etching', 3))).toBe(1.2);
  });

  it('lies between on the log scale for half a grade', () => {
    expect(medianDepth(defect('swirl-marks', 3.5))).toBeCloseTo(Math.sqrt(1.1 * 1.7), 12);
    expect(medianDepth(defect('swirl-marks', 0.5))).toBeCloseTo(0.2, 12);
  });

  it('is 0 at grade 0 and for what polishing does not mend', () => {
    expect(medianDepth(defect('swirl-marks', 0))).toBe(0);
    expect(medianDepth(defect('orange-peel', 4))).toBe(0);
  });

  it('is the measured one where it was measured', () => {
    expect(medianDepth(defect('swirl-marks', 1, 2.2))).toBe(2.2);
  });

  it('stays at the deepest median past the last grade', () => {
    expect(medianDepth(defect('swirl-marks', 6))).toBe(2.5);
  });
});

describe('the expected correction', () => {
  it('reaches 85 % of swirls of grade 3 at 2.96 µm while the depth scale is unknown (own check value)', () => {
    expect(needFor85(UNTRIED_LOG_SD)).toBeCloseTo(2.96, 2);
  });

  it('reaches it at 2.56 µm with the depth scale known (own check value)', () => {
    expect(needFor85(UNTRIED_LOG_SD, { mean: 0, sd: 0 })).toBeCloseTo(2.56, 2);
  });

  it('is Φ(ln(R/D)/√(.6² + .5² + σ²))', () => {
    // R = D·e^1.1, σ = 0: 1.1/√.61 = 1.40841; Φ = .92050 (normal table)
    expect(expected(1.1 * Math.exp(1.1), 0)).toBeCloseTo(0.9205, 4);
    expect(expected(1.1, 0.5)).toBe(0.5);
  });

  it('moves with the depth scale, and is surer where removal and depth are known to go together', () => {
    // Var[ln R/D] = .36 + .25 + .25 − 2·.2 = .46; E = 1.1 − .3: Φ(.8/√.46 = 1.17954) = .88091 (normal table)
    const share = expectedCorrection(
      removal(Math.exp(1.1), 0.5, 0.2),
      1,
      { mean: 0.3, sd: 0.5 },
      0.6,
    );
    expect(share).toBeCloseTo(0.8809, 4);
  });

  it('is nothing without removal and everything without defects', () => {
    expect(expected(0, 0.5)).toBe(0);
    expect(expected(1, 0.5, 0)).toBe(1);
  });
});

describe('what it takes to clear more than another removal', () => {
  const logSds = [0.15, 0.3, 0.55];
  const medians = [0.3, 0.9, 1.5, 4];

  it('is no less than is said, however well each is foretold', () => {
    for (const depth of [0.7, 1.7]) {
      for (const [logSd, median] of logSds.flatMap((sd) => medians.map((m) => [sd, m] as const))) {
        const than = removal(median, logSd, 0.02);
        const doubts = logSds.map((sd) => doubtOf(removal(1, sd, 0.02)));
        const [least, most] = [Math.min(...doubts), Math.max(...doubts)];
        const needed = leastClearingMore(
          than,
          [least, most],
          depth,
          depthScale,
          correction.depthLogSd,
        );
        const share = (one: ReturnType<typeof removal>): number =>
          expectedCorrection(one, depth, depthScale, correction.depthLogSd);
        for (const other of logSds) {
          expect(share(removal(0.999 * needed, other, 0.02))).toBeLessThan(share(than));
        }
      }
    }
  });

  it('is as much as that takes where all are foretold alike', () => {
    const doubt = doubtOf(removal(1, 0.5));
    const needed = leastClearingMore(
      removal(1.5, 0.5),
      [doubt, doubt],
      1.1,
      depthScale,
      correction.depthLogSd,
    );
    expect(needed).toBeCloseTo(1.5, 12);
  });
});

describe('sanding marks', () => {
  it('are as deep as a sixth of the grain that left them (FEPA 43 d50), whatever the grade', () => {
    const kind = correctionModel.defects.find(({ id }) => id === 'sanding-marks-p2000');
    if (kind === undefined) throw new Error('P2000 marks are a built-in defect');
    for (const grade of [1, 3, 5]) {
      expect(medianDepth({ kind, grade, depth: null })).toBeCloseTo(10.3 / 6, 12);
    }
  });
});
