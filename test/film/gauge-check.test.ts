import { describe, expect, it } from 'vitest';
import { studentTQuantile } from '../../src/base/stats/student-t.ts';
import { micrometres } from '../../src/base/units.ts';
import { adjusted, fitAdjustment } from '../../src/film/gauge-adjustment.ts';
import { checkGauge, driftBetween, type ShimReading } from '../../src/film/gauge-check.ts';

const terms = {
  permitted: { fixed: micrometres(1), proportional: 0.02 },
  assumedRepeatability: micrometres(1.5),
  step: micrometres(0.1),
};

const onShim = (shim: number, uncertainty: number, ...readings: number[]): readonly ShimReading[] =>
  readings.map((reading) => ({
    shim: micrometres(shim),
    shimUncertainty: micrometres(uncertainty),
    reading: micrometres(reading),
  }));

describe('a gauge checked on shims', () => {
  it('has its error with shim, display and repeatability as sources', () => {
    // Readings 100.2 100.4 100.6: mean error .4, s = .2 on 2 dof; u² = .25² + .1²/12 + .04/3
    const [shim] = checkGauge(onShim(100, 0.5, 100.2, 100.4, 100.6), terms).shims;
    expect(shim?.error.value).toBeCloseTo(0.4, 12);
    const u2 = 0.25 ** 2 + 0.1 ** 2 / 12 + 0.04 / 3;
    // ν = u⁴/((.04/3)²/2) = 66.2, cut to 66
    const dof = Math.floor(u2 ** 2 / ((0.04 / 3) ** 2 / 2));
    expect(dof).toBe(66);
    expect(shim?.expanded).toBeCloseTo(studentTQuantile(0.975, 66) * Math.sqrt(u2), 10);
    expect(shim?.permitted).toBe(3);
    expect(shim?.verdict).toBe('pass');
  });
  it('pools repeatability over all shims: √((2·.04 + 1·.02)/3)', () => {
    const { repeatability } = checkGauge(
      [...onShim(100, 0.5, 100.2, 100.4, 100.6), ...onShim(50, 0.5, 50.1, 50.3)],
      terms,
    );
    expect(repeatability.dof).toBe(3);
    expect(repeatability.sd).toBeCloseTo(Math.sqrt((2 * 0.04 + 0.02) / 3), 12);
  });
  it('takes the assumed repeatability where no shim was read twice', () => {
    const { repeatability } = checkGauge(onShim(100, 0.5, 100.2), terms);
    expect(repeatability).toEqual({ sd: 1.5, dof: Number.POSITIVE_INFINITY });
  });
  it('passes, fails or stays undecided by the guard band of JCGM 106', () => {
    // One reading each, U = 1.96·√(.25² + .1²/12 + 1.5²) = 2.981; MPE 3 at 100 µm.
    const at = (reading: number) => checkGauge(onShim(100, 0.5, reading), terms).verdict;
    expect(at(100.0)).toBe('pass');
    expect(at(100.1)).toBe('undecided');
    expect(at(94.1)).toBe('undecided');
    expect(at(94.0)).toBe('fail');
  });
  it('fails on one shim out of limits, whatever the others say', () => {
    const good = onShim(50, 0.2, 50, 50.1, 50, 49.9);
    const bad = onShim(250, 0.2, 262, 262.1, 262, 261.9);
    expect(checkGauge(good, terms).verdict).toBe('pass');
    expect(checkGauge([...bad, ...good], terms)).toMatchObject({
      verdict: 'fail',
      shims: [
        { shim: 50, verdict: 'pass' },
        { shim: 250, verdict: 'fail' },
      ],
    });
  });
});

describe('drift between two checks', () => {
  const before = checkGauge(onShim(100, 2, 100.1, 99.9, 100, 100.2, 99.8), terms);
  const moved = (by: number) =>
    checkGauge(onShim(100, 2, 100.1 + by, 99.9 + by, 100 + by, 100.2 + by, 99.8 + by), terms);

  it('keeps the repeatability of both and drops the error of the shim', () => {
    // s² = .025 on 4 dof in each; u² = 2·.025/5, ν = 8, t(.975; 8) = 2.306004 (tables)
    const [drift] = driftBetween(before, moved(0.2));
    expect(drift?.change).toBeCloseTo(0.2, 12);
    expect(drift?.expanded).toBeCloseTo(2.306004 * Math.sqrt((2 * 0.025) / 5), 6);
  });
  it('is proved beyond that and not within it', () => {
    expect(driftBetween(before, moved(0.23))[0]?.proved).toBe(false);
    expect(driftBetween(before, moved(0.24))[0]?.proved).toBe(true);
    expect(driftBetween(before, moved(-0.24))[0]?.proved).toBe(true);
  });
  it('is not told of a shim that only one check has', () => {
    expect(driftBetween(before, checkGauge(onShim(50, 2, 50), terms))).toEqual([]);
  });
});

describe('the adjustment of a gauge', () => {
  it('is the least-squares line through the shims, and undoes itself', () => {
    // readings 2 + 1.03·t exactly
    const check = checkGauge(
      [50, 100, 250].flatMap((shim) => onShim(shim, 0.5, 2 + 1.03 * shim)),
      terms,
    );
    const adjustment = fitAdjustment(check);
    expect(adjustment.offset).toBeCloseTo(2, 10);
    expect(adjustment.slope).toBeCloseTo(1.03, 12);
    expect(adjusted(micrometres(2 + 1.03 * 120), adjustment)).toBeCloseTo(120, 10);
  });
  it('weighs a shim by its readings, as the normal equations solved by hand do', () => {
    // x: 0 (once, reads 0), 100 (three times, reads 101, 100, 102), 200 (once, reads 201)
    // Sx = 500, Sy = 504, Sxx = 70000, Sxy = 30300 + 40200 = 70500, n = 5
    // slope = (5·70500 − 500·504)/(5·70000 − 500²) = 100500/100000 = 1.005; offset = (504 − 1.005·500)/5 = .3
    const check = checkGauge(
      [...onShim(0, 0.5, 0), ...onShim(100, 0.5, 101, 100, 102), ...onShim(200, 0.5, 201)],
      terms,
    );
    const { slope, offset } = fitAdjustment(check);
    expect(slope).toBeCloseTo(1.005, 12);
    expect(offset).toBeCloseTo(0.3, 10);
  });
  it('from one shim is an offset alone', () => {
    const { slope, offset } = fitAdjustment(checkGauge(onShim(100, 0.5, 102, 104), terms));
    expect([slope, offset]).toEqual([1, 3]);
  });
});
