import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import type { FilmModel } from '../../../src/film/film-model.ts';
import {
  adjustReadings,
  type GaugeInUse,
  gaugeStanding,
  measuredWith,
  stepBeforeAdjusting,
} from '../../../src/film/gauge/gauge-in-use.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { evenly } from '../../evenly.ts';
import { amongSound, fiveAround, onFace, reading } from '../car-builder.ts';

const um = micrometres;
const gauge = (
  fixed: number,
  proportional: number,
  rest: Partial<GaugeInUse> = {},
): GaugeInUse => ({
  permitted: { fixed: um(fixed), proportional },
  verdict: null,
  checks: [],
  adjustment: null,
  ...rest,
});
const check = (shim: number, error: number, expanded: number) => ({
  shim: um(shim),
  mean: um(shim + error),
  error: um(error),
  expanded: um(expanded),
});

const modelOf = (one: GaugeInUse): FilmModel => ({
  ...filmModel,
  measurement: measuredWith(filmModel.measurement, one),
});
const panelWith = (one: GaugeInUse) =>
  amongSound(fiveAround('tested', 112), { model: modelOf(one) }).panel;

const Z_95 = 1.644854;
/** What the gauge takes off the thinnest credible film, from its half-width at 112 µm. */
const margin = (halfWidth: number): number => (Z_95 * halfWidth) / Math.sqrt(3);

describe('the statement of a gauge', () => {
  const usual = () => amongSound(fiveAround('tested', 112)).panel;

  it('takes the place of the usual one: (1 + .01·112)/√3 = 1.223983 at 112 µm', () => {
    // Usual: (1 + .02·112)/√3 = 1.870615
    expect(usual().film?.calibration).toBeCloseTo(1.870615, 6);
    expect(panelWith(gauge(1, 0.01)).film?.calibration).toBeCloseTo(1.223983, 6);
  });

  it('moves the thinnest credible film by 1.645 of the difference', () => {
    const { thinnest } = panelWith(gauge(1, 0.01));
    expect(thinnest).toBeCloseTo((usual().thinnest ?? 0) + margin(3.24) - margin(2.12), 5);
  });

  it('leaves more to go where it is better, never less', () => {
    const better = panelWith(gauge(0.5, 0.005));
    const worse = panelWith(gauge(5, 0.1));
    expect(better.budget).toBeGreaterThanOrEqual(usual().budget);
    expect(worse.budget).toBeLessThan(usual().budget);
  });

  it('that is worse never raises the thinnest credible film nor the budget', () => {
    const half = evenly(0, 10);
    const share = evenly(0, 0.1);
    fc.assert(
      fc.property(half, share, half, share, (fixed, proportional, more, moreShare) => {
        const one = panelWith(gauge(fixed, proportional));
        const worse = panelWith(gauge(fixed + more, proportional + moreShare));
        expect(worse.thinnest).toBeLessThanOrEqual(one.thinnest ?? 0);
        expect(worse.budget).toBeLessThanOrEqual(one.budget + 1e-9);
      }),
      { numRuns: 40 },
    );
  });
});

describe('a check on shims', () => {
  it('that failed widens the calibration to the worst |e| + U', () => {
    // MPE at 100: 2; |7.2| − .8 > 2: fail. Half-width 8.0 against 1 + .01·112 = 2.12.
    const failed = gauge(1, 0.01, { checks: [check(0, 0.1, 0.2), check(100, -7.2, 0.8)] });
    expect(gaugeStanding(failed, filmModel.measurement)).toEqual({
      verdict: 'fail',
      worst: 8,
      reached: true,
    });
    expect(panelWith(failed).film?.calibration).toBeCloseTo(8 / Math.sqrt(3), 10);
  });

  it('never narrows it: where the statement is wider there, it stands', () => {
    // Fails on the bare plate by 2.2 at most; at 112 µm the statement is 1 + .02·112 = 3.24.
    const failed = gauge(1, 0.02, { checks: [check(0, 1.8, 0.4)] });
    expect(gaugeStanding(failed, filmModel.measurement)).toEqual({
      verdict: 'fail',
      worst: expect.closeTo(2.2, 10),
      reached: false,
    });
    expect(panelWith(failed).film?.calibration).toBeCloseTo(3.24 / Math.sqrt(3), 6);
  });

  it.each([
    ['passed', check(100, 0.5, 0.4), 'pass'],
    ['was undecided', check(100, 1.8, 0.6), 'undecided'],
  ])('that %s leaves the statement as it is', (_, one, verdict) => {
    const checked = gauge(1, 0.01, { checks: [one] });
    expect(gaugeStanding(checked, filmModel.measurement).verdict).toBe(verdict);
    expect(panelWith(checked).film?.calibration).toBeCloseTo(1.223983, 6);
  });

  it('that no shim as thick as a film was part of is undecided, and gives no better share of the film', () => {
    const bare = gauge(1, 0.01, {
      verdict: 'pass',
      checks: [check(0, 0.1, 0.2), check(20, 0.1, 0.2)],
    });
    expect(gaugeStanding(bare, filmModel.measurement)).toMatchObject({
      verdict: 'undecided',
      reached: false,
    });
    // Usual: (1 + .02·112)/√3, where the statement alone is 1.223983.
    expect(panelWith(bare).film?.calibration).toBeCloseTo(1.870615, 6);
    const worse = gauge(1, 0.05, { checks: [check(0, 0.1, 0.2)] });
    expect(panelWith(worse).film?.calibration).toBeCloseTo(6.6 / Math.sqrt(3), 6);
    const reached = gauge(1, 0.01, { checks: [check(0, 0.1, 0.2), check(49.6, 0.1, 0.2)] });
    expect(gaugeStanding(reached, filmModel.measurement).verdict).toBe('pass');
  });

  it('is decided from its figures, whatever the file calls it', () => {
    const failed = gauge(1, 0.01, { verdict: 'pass', checks: [check(100, 7.2, 0.8)] });
    expect(gaugeStanding(failed, filmModel.measurement).verdict).toBe('fail');
  });

  it('without figures is what the file calls it, and widens nothing', () => {
    const failed = gauge(1, 0.01, { verdict: 'fail' });
    expect(gaugeStanding(failed, filmModel.measurement)).toEqual({
      verdict: 'fail',
      worst: null,
      reached: null,
    });
    expect(panelWith(failed).film?.calibration).toBeCloseTo(1.223983, 6);
  });

  it('of an adjusted gauge is about what is left of the errors', () => {
    const adjusted = gauge(1, 0.01, {
      verdict: 'fail',
      checks: [check(0, 5.1, 0.3), check(50, 5, 0.4), check(100, 4.8, 0.5)],
      adjustment: { offset: um(-5), slope: 1 },
    });
    const standing = gaugeStanding(adjusted, filmModel.measurement);
    expect(standing.verdict).toBe('pass');
    expect(standing.worst).toBeCloseTo(0.7, 10); // |−.2| + .5
    expect(panelWith(adjusted).film?.calibration).toBeCloseTo(1.223983, 6);
  });
});

describe('the repeatability of a gauge', () => {
  const stated = (sd: number, dof?: number) =>
    measuredWith(
      filmModel.measurement,
      gauge(1, 0.01, { repeatability: { sd: um(sd), ...(dof === undefined ? {} : { dof }) } }),
    );

  it('takes the place of the assumed one', () => {
    expect(filmModel.measurement.repeatability).toBe(1.5);
    expect(stated(0.4, 12).repeatability).toBe(0.4);
    expect(stated(0.4).repeatability).toBe(0.4);
  });
  it('does not where it rests on fewer degrees of freedom than are asked of a car', () => {
    expect(stated(0.4, 5).repeatability).toBe(0.4);
    expect(stated(0.4, 4).repeatability).toBe(1.5);
  });
  it('sets the least spread there is; the readings’ own repeats stand above it', () => {
    const even = ['112', '112', '112', '112', '112'].map(Number);
    const scattered = (sd: number) => modelOf(gauge(1, 0.01, { repeatability: { sd: um(sd) } }));
    const single = (sd: number) =>
      amongSound(onFace('tested', ...even), { model: scattered(sd) }).panel.film?.spread.sd ?? 0;
    expect(single(6)).toBeGreaterThan(single(1));
    // Five points read twice, .2 apart: SD .141 on 5 degrees of freedom counts, whatever is stated.
    const twice = even.flatMap((value, i) => [
      reading('tested', `${i + 1}`, value),
      reading('tested', `${i + 1}`, value + 0.2, { repeat: 2 }),
    ]);
    const repeated = (sd: number) =>
      amongSound(twice, { model: scattered(sd) }).panel.film?.spread.sd;
    expect(repeated(6)).toBe(repeated(1));
  });
});

describe('adjusted readings', () => {
  const line = { offset: um(-2), slope: 0.97 };
  it('are −2 + .97 of what was shown, and never under nothing', () => {
    const [one, thin] = adjustReadings(onFace('a', 120, 1), line);
    expect(one?.thickness).toBeCloseTo(114.4, 10);
    expect(thin?.thickness).toBe(0);
  });
  it('are those of the whole film: a layer was not read against shims', () => {
    const clear = reading('a', '1', 45, { layer: 'clear' });
    expect(adjustReadings([clear], line)).toEqual([clear]);
  });
  it('keep the step that the display had, which they themselves no longer show', () => {
    expect(stepBeforeAdjusting(onFace('a', 120, 113), line)).toBeCloseTo(0.97, 12);
    expect(stepBeforeAdjusting(onFace('a', 120, 110), line)).toBeCloseTo(9.7, 12);
    expect(stepBeforeAdjusting(onFace('a', 120, 113), line, um(20))).toBeCloseTo(19.4, 12);
    expect(stepBeforeAdjusting(onFace('a', 120.1, 113), line, um(1))).toBeCloseTo(0.97, 12);
  });
  it('that are lower lower the thinnest credible film by as much as the readings fell', () => {
    const car = (down: number) =>
      amongSound(adjustReadings(fiveAround('tested', 112), { offset: um(-down), slope: 1 })).panel;
    // u_cal falls with the reading as well: 1.645·.02·4/√3 = .076
    expect(car(0).thinnest).toBeCloseTo((car(4).thinnest ?? 0) + 4 - margin(0.08), 5);
  });
});

describe('the step of a display', () => {
  it('that is known to be coarser than the readings show counts', () => {
    const fine = panelWith(gauge(1, 0.01));
    const coarse = modelOf(gauge(1, 0.01, { step: um(20) }));
    // 20/√12 = 5.77 is more than the readings vary.
    const { panel } = amongSound(fiveAround('tested', 112), { model: coarse });
    expect(panel.film?.spread.sd ?? 0).toBeGreaterThan(fine.film?.spread.sd ?? 0);
    expect(panel.thinnest ?? 0).toBeLessThan(fine.thinnest ?? 0);
  });
});
