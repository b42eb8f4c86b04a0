import { describe, expect, it } from 'vitest';
import { studentTQuantile } from '../../../src/base/stats/student-t.ts';
import { micrometres } from '../../../src/base/units.ts';
import {
  checkGauge,
  driftBetween,
  repeatabilityOver,
  type ShimReading,
} from '../../../src/film/gauge/gauge-check.ts';

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

it('the repeatability over several checks is pooled by their degrees of freedom, and none without repeats', () => {
  // s² = .04 on two degrees of freedom, and .02 on one: (2·.04 + .02)/3.
  const first = checkGauge(onShim(100, 0.5, 100.2, 100.4, 100.6), terms);
  const second = checkGauge(onShim(100, 0.5, 100.1, 100.3), terms);
  const once = checkGauge(onShim(100, 0.5, 100.1), terms);
  const pooled = repeatabilityOver([first, once, second]);
  expect(pooled?.dof).toBe(3);
  expect(pooled?.sd).toBeCloseTo(Math.sqrt((2 * 0.04 + 0.02) / 3), 10);
  expect(repeatabilityOver([once])).toBeUndefined();
  expect(repeatabilityOver([])).toBeUndefined();
});

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
  it('has it from the shims that were read more than once, whatever else was read once', () => {
    const { repeatability } = checkGauge(
      [...onShim(100, 0.5, 100.2, 100.4, 100.6), ...onShim(50, 0.5, 57)],
      terms,
    );
    expect(repeatability.dof).toBe(2);
    expect(repeatability.sd).toBeCloseTo(0.2, 12);
  });
  it('needs a reading', () => {
    expect(() => checkGauge([], terms)).toThrow('at least one reading');
  });
  it('takes the larger uncertainty where a shim is given two', () => {
    const [shim] = checkGauge([...onShim(100, 0.5, 100), ...onShim(100, 2, 100)], terms).shims;
    expect(shim?.shimUncertainty).toBe(2);
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
  it('has the chance that its error is within what is permitted', () => {
    // Error 0, U = 1.96·√(.25² + .1²/12 + 1.5²), MPE 3: 2·Φ(3/1.520965) − 1 = 2·Φ(1.97243) − 1 = .95144
    const [shim] = checkGauge(onShim(100, 0.5, 100), terms).shims;
    expect(shim?.conformance).toBeCloseTo(0.95144, 4);
  });
  it('is surely within well inside the limit, and an even chance at the limit itself', () => {
    const at = (reading: number) =>
      checkGauge(onShim(100, 0.5, reading, reading + 0.4, reading + 0.8), terms).shims[0];
    expect(at(99.6)?.verdict).toBe('pass');
    expect(at(99.6)?.conformance).toBeGreaterThan(0.999);
    expect(at(102.6)?.verdict).toBe('undecided');
    expect(at(102.6)?.conformance).toBeCloseTo(0.5, 3);
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

  it('keeps repeatability and step of both and drops the error of the shim', () => {
    // s² = .025 on 4 dof in each, step .1: u² = 2·(.025/5 + .01/12) = .0116667
    // ν = u⁴/(2·(.025/5)²/4) = 10.9, cut to 10; t(.975; 10) = 2.228139 (tables): U = .240663
    const [drift] = driftBetween(before, moved(0.2));
    expect(drift?.change).toBeCloseTo(0.2, 12);
    expect(drift?.expanded).toBeCloseTo(2.228139 * Math.sqrt(2 * (0.025 / 5 + 0.01 / 12)), 6);
  });
  it('is proved beyond that and not within it', () => {
    expect(driftBetween(before, moved(0.24))[0]?.proved).toBe(false);
    expect(driftBetween(before, moved(0.25))[0]?.proved).toBe(true);
    expect(driftBetween(before, moved(-0.25))[0]?.proved).toBe(true);
  });
  it('has the display step in it even where no reading scattered', () => {
    const whole = { ...terms, step: micrometres(1) };
    const steady = (reading: number) =>
      checkGauge(onShim(100, 2, reading, reading, reading), whole);
    // U = 1.96·√(2/12) = .80: half a step proves nothing.
    expect(driftBetween(steady(100), steady(100.5))[0]?.proved).toBe(false);
    expect(driftBetween(steady(100), steady(100))[0]?.expanded).toBeCloseTo(
      1.959964 * Math.sqrt(2 / 12),
      6,
    );
  });
  it('shares its risk among the shims: two of them at 97.5 % each', () => {
    const two = (by: number) =>
      checkGauge(
        [
          ...onShim(100, 2, 100.1 + by, 99.9 + by, 100 + by, 100.2 + by, 99.8 + by),
          ...onShim(50, 2, 50.1, 49.9, 50, 50.2, 49.8),
        ],
        terms,
      );
    // s² = .025 on 8 dof in each; u² = 2·(.025/5 + .01/12), ν = 21.8, cut to 21; t(.9875; 21) = 2.414
    const drift = driftBetween(two(0), two(0.3));
    expect(drift.map(({ shim }) => shim)).toEqual([50, 100]);
    for (const { expanded } of drift) expect(expanded).toBeCloseTo(2.414 * 0.108012, 3);
    expect(drift.map(({ proved }) => proved)).toEqual([false, true]);
  });
  it('is not told of a shim that only one check has', () => {
    expect(driftBetween(before, checkGauge(onShim(50, 2, 50), terms))).toEqual([]);
  });
});
