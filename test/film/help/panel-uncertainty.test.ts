import { describe, expect, it } from 'vitest';
import { standardUncertainty, uncertaintyBudget } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import { panelMeanUncertainty } from '../../../src/film/help/panel-uncertainty.ts';
import type { PanelPoint } from '../../../src/film/panel-points.ts';

const point = (name: string, repeats: number, curved = false): PanelPoint => ({
  point: name,
  thickness: micrometres(110),
  repeats: Array.from({ length: repeats }, () => micrometres(110)),
  place: 'face',
  curved,
});

const scatter = {
  repeatability: { sd: micrometres(1.5), dof: 12 },
  step: micrometres(1),
  curvature: micrometres(1),
};
const panel = (points: readonly PanelPoint[], sd = 5) => ({
  mean: micrometres(110),
  points,
  spread: { sd: micrometres(sd), dof: 10 },
  calibration: micrometres(1.848),
});
const five = ['1', '2', '3', '4', '5'];

describe('the uncertainty of a panel’s mean', () => {
  it('keeps its sources apart: five points read three times, one of them curved', () => {
    const points = five.map((name) => point(name, 3, name === '5'));
    const mean = panelMeanUncertainty(panel(points), scatter);
    // one point: 1.5²/3 + 1/12/3 + 1/5 (curved, on average) = .75 + .02778 + .2
    const within = 1.5 ** 2 / 3 + 1 / 36 + 1 / 5;
    expect(mean.components.get('repeatability')).toEqual({
      contribution: expect.closeTo(1.5 / Math.sqrt(15), 12),
      dof: 12,
    });
    expect(mean.components.get('resolution')?.contribution).toBeCloseTo(1 / Math.sqrt(12 * 15), 12);
    expect(mean.components.get('curvature')?.contribution).toBeCloseTo(1 / 5, 12);
    expect(mean.components.get('film')?.contribution).toBeCloseTo(Math.sqrt((25 - within) / 5), 12);
    expect(mean.components.get('calibration')?.contribution).toBe(1.848);
  });
  it('comes to √(s̃²/n + u_cal²) in all, as the parts only share out what the points show', () => {
    const mean = panelMeanUncertainty(panel(five.map((name) => point(name, 2))), scatter);
    expect(standardUncertainty(mean)).toBeCloseTo(Math.sqrt(25 / 5 + 1.848 ** 2), 12);
  });
  it('has no part of the film where the gauge scatters as much as the points do', () => {
    const mean = panelMeanUncertainty(
      panel(
        five.map((name) => point(name, 1)),
        1,
      ),
      scatter,
    );
    expect(mean.components.get('film')?.contribution).toBe(0);
    expect(standardUncertainty(mean)).toBeGreaterThan(Math.sqrt(1 / 5 + 1.848 ** 2));
  });
  it('names no curvature where no point is marked as curved', () => {
    const mean = panelMeanUncertainty(panel(five.map((name) => point(name, 1))), scatter);
    expect([...mean.components.keys()]).not.toContain('curvature');
  });
  it('has calibration as its largest source once points are many, for it never averages down', () => {
    const many = Array.from({ length: 40 }, (_, k) => point(`${k}`, 1));
    const [largest] = uncertaintyBudget(panelMeanUncertainty(panel(many), scatter));
    expect(largest?.source).toBe('calibration');
  });
});
