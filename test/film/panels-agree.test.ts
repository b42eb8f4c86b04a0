/** How surely the panels of a car agree on its usual film, and that this is a factory's: by hand. */
import { describe, expect, it } from 'vitest';
import { studentTCdf } from '../../src/base/stats/student-t.ts';
import { uncertain } from '../../src/base/uncertainty.ts';
import { micrometres } from '../../src/base/units.ts';
import { agrees, doubtOfAgreement, doubtOfThickness } from '../../src/film/panels-agree.ts';
import { filmModel } from '../../src/formats/models.ts';
import { plainPanel } from './car-builder.ts';

const um = micrometres;
/** A repaint is 40 µm over, or 35 % from 114.3 µm on; cut back is 12 µm under; three panels make a baseline. */
const { conditions } = filmModel;
const alike = (film: number, mean = film) => ({
  panel: plainPanel('p'),
  film: um(film),
  mean: um(mean),
  read: um(film),
  painted: um(film),
});
/** ± 4 µm on five degrees of freedom; the gauge errs by 3 µm, on the panels as on their middle. */
const usual = (value: number) =>
  uncertain(um(value), {
    baseline: { contribution: 4, dof: 5 },
    calibration: { contribution: 3, dof: Number.POSITIVE_INFINITY },
  });

describe('a panel agrees', () => {
  it('up to the line of a repaint by its median, and down to that of film cut back by its mean', () => {
    expect(agrees(um(100), alike(140), conditions)).toBe(true);
    expect(agrees(um(100), alike(140.1), conditions)).toBe(false);
    expect(agrees(um(120), alike(161.9), conditions)).toBe(true);
    expect(agrees(um(120), alike(162.1), conditions)).toBe(false);
    expect(agrees(um(100), alike(100, 88), conditions)).toBe(true);
    expect(agrees(um(100), alike(100, 87.9), conditions)).toBe(false);
  });
});

describe('the doubt that three agree', () => {
  const doubt = (...films: readonly number[]) =>
    doubtOfAgreement(
      usual(100),
      films.map((film) => alike(film)),
      conditions,
    );
  it('is that of the least sure of three: what lacks 4 µm could lack 12 if the middle lay 8 µm higher', () => {
    expect(doubt(96, 100, 104)).toBeCloseTo(studentTCdf(-8 / 4, 5), 12);
    expect(doubt(100, 100, 134)).toBeCloseTo(studentTCdf(-6 / 4, 5), 12);
  });
  it('is a half where one lies on its line', () => {
    expect(doubt(88, 100, 101)).toBeCloseTo(0.5, 12);
  });
  it('is that of the third of five', () => {
    expect(doubt(90, 92, 98, 100, 110)).toBeCloseTo(studentTCdf(-10 / 4, 5), 12);
  });
  it('takes a line of a share as so much farther: it rises with the usual film itself', () => {
    const found = doubtOfAgreement(usual(120), [alike(148.5), alike(120), alike(120)], conditions);
    expect(found).toBeCloseTo(studentTCdf(-10 / 4, 5), 12);
  });
});

describe('the doubt that a usual film is a factory’s', () => {
  it('is the chance that it lies over the line of repaint to 112 µm, the gauge with it, and a half at most', () => {
    // 152 µm; √(4² + 3²) = 5 on 5·(5/4)⁴ = 12.2 degrees of freedom.
    expect(doubtOfThickness(usual(142), um(112), conditions)).toBeCloseTo(
      studentTCdf(-10 / 5, 5 * (5 / 4) ** 4),
      2,
    );
    expect(doubtOfThickness(usual(142), um(112), conditions)).toBeGreaterThan(0.02);
    expect(doubtOfThickness(usual(190), um(112), conditions)).toBe(0.5);
    expect(doubtOfThickness(usual(112), um(112), conditions)).toBeLessThan(1e-4);
  });
});
