/** The lines that a panel is held against, each by the figure, the line and the side it is on: in round numbers. */
import { describe, expect, it } from 'vitest';
import { exactly, type Uncertain, uncertain } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import { filmTests, pointTests, sideTests } from '../../../src/film/condition/condition-tests.ts';
import type {
  IfPaintedOver,
  JudgedAgainst,
  JudgedPanel,
} from '../../../src/film/condition/judged-panel.ts';
import type { LineComparison } from '../../../src/film/condition/line-comparison.ts';
import type { PanelPoint } from '../../../src/film/panel-points.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { plainPanel } from '../car-builder.ts';

const um = micrometres;
const model = {
  ...filmModel,
  measurement: { ...filmModel.measurement, fixed: um(0), proportional: 0 },
  conditions: {
    ...filmModel.conditions,
    filler: um(500),
    refinished: um(180),
    refinishedAbove: um(30),
    refinishedAboveShare: 0.25,
    cutBack: um(12),
    nearRisk: 0.05,
  },
  zones: { ...filmModel.zones, meansApart: um(20), meansApartSds: 5, gap: um(10), gapSds: 2 },
};

const point = (thickness: number, name = '1'): PanelPoint => ({
  point: name,
  thickness: um(thickness),
  repeats: [um(thickness)],
  place: 'face',
  curved: false,
});

const of = (value: number, u: number): Uncertain<'µm'> =>
  uncertain(um(value), { film: { contribution: u, dof: Number.POSITIVE_INFINITY } });

/** Three points about a mean that is 2 µm uncertain. */
const panelAt = (mean: number, rest: Partial<JudgedPanel> = {}): JudgedPanel => {
  const points = [point(mean - 5), point(mean), point(mean + 5)];
  const uncertainty = of(mean, 2);
  return {
    points,
    otherPoints: [],
    gone: exactly(um(0)),
    film: {
      mean: um(mean),
      smallest: um(mean - 5),
      count: 3,
      spread: { sd: um(4), dof: 8 },
      calibration: um(0),
    },
    uncertainty,
    besideFiller: { points, median: um(mean), uncertainty },
    ...rest,
  };
};

const against: JudgedAgainst = {
  baseline: exactly(um(100)),
  ifPaintedOver: null,
  scatter: { repeatability: { sd: um(1), dof: 20 }, step: um(0), curvature: um(0) },
  zoneSpread: { sd: um(4), dof: 8 },
};

const told = ({ compared, condition, side, figure, line, isBeyond, baseline }: LineComparison) => ({
  compared,
  condition,
  side,
  figure,
  line,
  isBeyond,
  baseline,
});

const sides = (panel: JudgedPanel, rest: Partial<JudgedAgainst> = {}) =>
  sideTests(panel, { ...against, ...rest }, model);

describe('filler', () => {
  it('is asked of the thickest point, those off the face among them', () => {
    const otherPoints = [{ ...point(520), place: 'edge' as const }];
    const { filler } = sides(panelAt(100, { otherPoints }));
    expect([filler.condition, filler.needs]).toEqual(['filler', 'one']);
    expect(filler.comparisons.map(told)).toEqual([
      {
        compared: 'largest-point',
        condition: 'filler',
        side: 'over',
        figure: 520,
        line: 500,
        isBeyond: true,
        baseline: null,
      },
    ]);
    expect(sides(panelAt(100)).filler.comparisons[0]?.figure).toBe(105);
  });
  it('is asked with what has gone put back', () => {
    const [line] = sides(panelAt(494, { gone: exactly(um(3)) })).filler.comparisons;
    expect([line?.figure, line?.putBack, line?.isBeyond]).toEqual([502, 3, true]);
  });
});

describe('repaint', () => {
  const repaint = (median: number, rest: Partial<JudgedAgainst> = {}) =>
    sides(panelAt(median), rest).refinished.comparisons;
  const lineOf = (rest: Partial<JudgedAgainst>) => {
    const [line] = repaint(100, rest);
    return [line?.line, line?.baseline];
  };
  it('is held to 30 µm or a quarter over the baseline, whichever is more, or to the line of any car', () => {
    expect(lineOf({})).toEqual([130, 100]);
    expect(lineOf({ baseline: exactly(um(140)) })).toEqual([175, 140]);
    // 150 + 37.5 lies over 180, and 144 · 1.25 on it.
    expect(lineOf({ baseline: exactly(um(150)) })).toEqual([180, null]);
    expect(lineOf({ baseline: exactly(um(144)) })).toEqual([180, null]);
    expect(lineOf({ baseline: null })).toEqual([180, null]);
  });
  it('is as uncertain as its line is: a quarter more than a thick baseline, as much as a thin one', () => {
    const shared = (value: number) =>
      uncertain(um(value), { baseline: { contribution: 4, dof: 9 } });
    const part = (value: number) =>
      repaint(100, { baseline: shared(value) })[0]?.difference.components.get('baseline');
    expect(part(100)?.contribution).toBe(-4);
    expect(part(140)?.contribution).toBe(-5);
  });
  it('is told of the median, which is √(π/2) times as uncertain as the mean', () => {
    const [line] = repaint(120);
    expect(line?.compared).toBe('median');
    expect(line?.standard).toBeCloseTo(2 * Math.sqrt(Math.PI / 2), 12);
    expect(line?.isBeyond).toBe(false);
  });

  describe('where the usual film may be repaint', () => {
    const ifPaintedOver: IfPaintedOver = {
      film: of(80, 3),
      chance: 0.2,
      shownBy: { panel: plainPanel('boot-lid') },
    };
    it('is held besides to the line of what the factory painted then, by the chance of that', () => {
      const [own, then, ...more] = repaint(100, { ifPaintedOver });
      expect(more).toEqual([]);
      expect([own?.line, own?.shownBy]).toEqual([130, undefined]);
      expect(then).toMatchObject({
        compared: 'median',
        condition: 'refinished',
        side: 'over',
        figure: 100,
        line: 110,
        baseline: 80,
        isBeyond: false,
        otherSide: 0.2,
        shownBy: 'boot lid',
      });
    });
    it('is not where it is repaint anyway, nor of film under the line of film cut back', () => {
      expect(repaint(131, { ifPaintedOver })).toHaveLength(1);
      expect(repaint(88, { ifPaintedOver })).toHaveLength(2);
      expect(repaint(87, { ifPaintedOver })).toHaveLength(1);
      expect(repaint(87, { ifPaintedOver, baseline: null })).toHaveLength(2);
    });
  });
});

describe('film cut back', () => {
  const shownBy = { panel: plainPanel('boot-lid') };
  const cutBack = (mean: number, chance: number | null = null) =>
    sides(panelAt(mean), {
      ifPaintedOver: chance === null ? null : { film: of(80, 3), chance, shownBy },
    }).cutBack.comparisons;
  it('is told of the mean, 12 µm under the baseline, and not without one', () => {
    expect(cutBack(86).map(told)).toEqual([
      {
        compared: 'mean',
        condition: 'cut-back',
        side: 'under',
        figure: 86,
        line: 88,
        isBeyond: true,
        baseline: 100,
      },
    ]);
    expect(sides(panelAt(86), { baseline: null }).cutBack.comparisons).toEqual([]);
  });
  it('is as unsure as that the factory painted so, where that is likelier than both its own doubt and the limit', () => {
    // 86 is 1 SD under the line: Φ(−1) = 15.9 %. 82 is 3 SDs under it: .13 %.
    const unsure = (mean: number, chance: number) => {
      const [line] = cutBack(mean, chance);
      return [line?.otherSide, line?.shownBy];
    };
    const own = expect.closeTo(0.158655254, 8);
    expect(unsure(86, 0.2)).toEqual([0.2, 'boot lid']);
    expect(unsure(86, 0.15)).toEqual([own, undefined]);
    expect(unsure(82, 0.06)).toEqual([0.06, 'boot lid']);
    expect(unsure(82, 0.05)).toEqual([expect.closeTo(0.001349898, 8), undefined]);
    expect(unsure(82, 0.02)).toEqual([expect.closeTo(0.001349898, 8), undefined]);
  });
  it('that it is not is no matter of whether the others were painted over', () => {
    expect(cutBack(90, 0.3)[0]).toMatchObject({ isBeyond: false, line: 88 });
    expect(cutBack(90, 0.3)[0]?.shownBy).toBeUndefined();
    expect(cutBack(90, 0.3)).toHaveLength(1);
  });
});

describe('what a panel is held to besides, by the chance that this counts', () => {
  const beside = (film: number, chance: number) => ({ film: exactly(um(film)), chance });
  const cutBack = (mean: number, film: number, chance: number) =>
    sides(panelAt(mean), { beside: beside(film, chance) }).cutBack.comparisons[0];
  it('takes the place of its own line where it is likelier beyond that: by the chance of both', () => {
    // 92 is 2 SDs over its own line of 88, Φ(−2) = 2.3 %, and 1 SD under 106 − 12: 84.1 %, half of the time.
    expect(cutBack(92, 106, 0.5)).toMatchObject({
      line: 94,
      baseline: 106,
      isBeyond: false,
      otherSide: expect.closeTo(0.5 * 0.8413447461, 9),
      ifHeld: 0.5,
    });
    // Where it counts for sure there is no chance to tell.
    expect(cutBack(92, 106, 1)?.otherSide).toBeCloseTo(0.8413447461, 9);
    expect(cutBack(92, 106, 1)?.ifHeld).toBeUndefined();
  });
  it('is left where its own line says as much, or has said so for sure', () => {
    expect(cutBack(92, 106, 0.02)).toMatchObject({ line: 88, isBeyond: false });
    // 92 is 3 SDs over 98 − 12: .13 % of the time.
    expect(cutBack(92, 98, 1)).toMatchObject({ line: 88, isBeyond: false });
    expect(cutBack(86, 106, 1)).toMatchObject({ line: 88, isBeyond: true });
  });
  it('holds repaint to its line in the same way', () => {
    const [line] = sides(panelAt(120), { beside: beside(80, 0.5) }).refinished.comparisons;
    expect(line).toMatchObject({ line: 110, baseline: 80, isBeyond: false, ifHeld: 0.5 });
    const z = 10 / (2 * Math.sqrt(Math.PI / 2));
    expect(z).toBeCloseTo(3.989, 3);
    // Φ(3.989) is 1 but for 3e-5.
    expect(line?.otherSide).toBeCloseTo(0.5, 4);
  });
});

const cut = { lower: [90, 91, 92], upper: [120, 121, 122], apart: 30, gap: 28 };

describe('two zones', () => {
  it('must lie apart and leave a gap, each held to its line', () => {
    const [filler, mixed, ...more] = pointTests(panelAt(100), cut, against, model);
    expect([filler?.condition, mixed?.condition, mixed?.needs, more]).toEqual([
      'filler',
      'mixed',
      'all',
      [],
    ]);
    const common = { condition: 'mixed', side: 'over', isBeyond: true, baseline: null };
    expect(mixed?.comparisons.map(told)).toEqual([
      { ...common, compared: 'halves-apart', figure: 30, line: 20 },
      { ...common, compared: 'halves-gap', figure: 28, line: 10 },
    ]);
    // Means of three points each, and two points: 4·√(2/3) and 4·√2.
    const film = mixed?.comparisons.map((one) => one.difference.components.get('film'));
    expect(film?.map((one) => one?.contribution)).toEqual([
      expect.closeTo(4 * Math.sqrt(2 / 3), 12),
      expect.closeTo(4 * Math.SQRT2, 12),
    ]);
  });
  it('are not asked after where its points may not be cut', () => {
    const tests = pointTests(panelAt(100), null, against, model);
    expect(tests.map(({ condition }) => condition)).toEqual(['filler']);
  });
});

describe('film in one zone', () => {
  const thinnest = { factor: 2, bound: um(92), gaugeMargin: um(0), thinnest: um(89) };
  const tests = (bound: typeof thinnest | null, withCut: typeof cut | null = null) => {
    const panel = panelAt(100);
    return filmTests(
      sides(panel),
      { ...panel, cut: withCut, thinnest: bound, totalFloor: um(90) },
      against,
      model,
    );
  };
  it('is tested for what is strongest first', () => {
    const words = tests(null, cut).map(({ condition, needs }) => `${condition}: ${needs}`);
    expect(words).toEqual([
      'filler: one',
      'mixed: all',
      'refinished: one',
      'thin: one',
      'cut-back: one',
    ]);
    expect(tests(null)).toHaveLength(4);
  });
  it('is thin by its smallest point, and by what is credible where a bound was drawn', () => {
    const thin = (bound: typeof thinnest | null) =>
      tests(bound)
        .find(({ condition }) => condition === 'thin')
        ?.comparisons.map(told);
    const common = { condition: 'thin', side: 'under', line: 90, baseline: null };
    const ofPoint = { ...common, compared: 'smallest-point', figure: 95, isBeyond: false };
    expect(thin(null)).toEqual([ofPoint]);
    expect(thin(thinnest)).toEqual([
      ofPoint,
      { ...common, compared: 'thinnest', figure: 89, isBeyond: true },
    ]);
  });
});
