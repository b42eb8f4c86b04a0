import { describe, expect, it } from 'vitest';
import { uncertaintyBudget } from '../../../src/base/uncertainty.ts';
import { micrometres } from '../../../src/base/units.ts';
import { panelWhy } from '../../../src/film/help/panel-why.ts';
import { topcoatCases } from '../../../src/film/limits/topcoat-cases.ts';
import { doubtAboutWhatIsLeft } from '../../../src/film/limits/variance-of-left.ts';
import { distributionFree } from '../../../src/film/thinnest-credible.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  fiveAround,
  knownFacts,
  onFace,
  standardTerms,
  UNTRIED_LOG_SD,
} from '../car-builder.ts';

const why = (...args: Parameters<typeof amongSound>) => {
  const { panel } = amongSound(...args);
  return { panel, why: panelWhy(panel, standardTerms, filmModel) };
};

describe('the doubt about the topcoat that is left', () => {
  const film = {
    mean: micrometres(112),
    smallest: micrometres(106),
    count: 5,
    spread: { sd: micrometres(5.3), dof: 10 },
    calibration: micrometres((1 + 0.02 * 112) / Math.sqrt(3)),
  };
  const parts = (median: number) => {
    const [plain] = topcoatCases(
      film,
      knownFacts,
      { mean: micrometres(0), sd: micrometres(0) },
      'standard',
      filmModel,
    );
    if (plain === undefined) throw new Error('clear over base is a topcoat');
    const topcoat = { ...plain, besides: [] };
    const removal = { median: micrometres(median), logSd: UNTRIED_LOG_SD };
    const doubt = doubtAboutWhatIsLeft(topcoat, removal, filmModel.topcoat);
    return new Map(doubt.map(({ source, share }) => [source, share]));
  };
  it('is, on a usual panel, four fifths how the total is shared between the layers', () => {
    // By hand: A 21.955, B 85.955: A·B/(A + B) 17.488; 2.706·14.045/20 1.900; removal 2.5²·e^.305·(e^.305 − 1) 3.02
    const usual = parts(2.5);
    expect(usual.get('layers')).toBeCloseTo(0.77, 2);
    expect(usual.get('removal')).toBeCloseTo(0.13, 2);
    expect(usual.get('spread')).toBeCloseTo(0.084, 2);
    expect(usual.get('sampling')).toBeLessThan(0.02);
    expect(usual.get('gauge')).toBeLessThan(0.01);
  });
  it('has parts that add up to all of it, by size', () => {
    const shares = [...parts(4).values()];
    expect(shares.reduce((sum, one) => sum + one, 0)).toBeCloseTo(1, 12);
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
  });
  it('names the removal first where that is most of it', () => {
    const [first] = parts(12).keys();
    expect(first).toBe('removal');
    expect([...parts(2.5).keys()][0]).toBe('layers');
  });
  it('has no share of anything where there is no doubt at all', () => {
    const exact = {
      mean: micrometres(112),
      count: Number.POSITIVE_INFINITY,
      spread: { sd: micrometres(0), dof: 10 },
      calibration: micrometres(0),
      taken: { mean: micrometres(0), sd: micrometres(0) },
    };
    const certain = { mean: micrometres(42), sd: micrometres(0), of: 'panel' } as const;
    const under = { mean: micrometres(70), sd: micrometres(10) };
    const knowledge = {
      top: { mean: micrometres(42), sd: micrometres(6) },
      under,
      statedClear: certain,
      statedUnder: null,
      zinc: { mean: 0, variance: 0 },
      panelToPanel: micrometres(3),
    };
    const doubt = doubtAboutWhatIsLeft(
      { told: { film: exact, knowledge } },
      { median: micrometres(0), logSd: UNTRIED_LOG_SD },
      filmModel.topcoat,
    );
    expect(doubt.map(({ share }) => share)).toEqual([0, 0, 0, 0, 0]);
  });
  it('has no part of the removal where nothing is removed', () => {
    expect(parts(0).get('removal')).toBe(0);
  });
});

describe('a panel taken apart', () => {
  it('shows a chain of figures that ends at the clear the survey states', () => {
    const { panel, why: parts } = why(fiveAround('tested', 104));
    const chain = parts.clear;
    if (chain === null || panel.topcoat === null) throw new Error('factory film has a topcoat');
    const { held, byTotal, share, gapCounted, overPanel, within } = chain;
    expect(held?.mean).toBe(42);
    expect(byTotal.mean).toBeCloseTo(34, 10);
    expect(gapCounted).toBeCloseTo(-8, 10);
    expect(overPanel.mean).toBeCloseTo(42 - 8 * share, 10);
    expect(overPanel.mean - 1.6448536 * Math.sqrt(within.variance)).toBeCloseTo(
      panel.topcoat.clear.mean,
      5,
    );
  });
  it('counts nothing of a total that is thicker than expected', () => {
    const { why: parts } = why(fiveAround('tested', 125));
    expect(parts.clear?.gapCounted).toBe(0);
    expect(parts.clear?.overPanel.mean).toBe(42);
  });
  it('shows a bound that is the mean less k times the spread, and what the gauge takes off it', () => {
    const { panel, why: parts } = why(fiveAround('tested', 112));
    const { film } = panel;
    if (film === null || parts.thinnest === null) throw new Error('five points have a bound');
    const { factor, bound, gaugeMargin, thinnest } = parts.thinnest;
    expect(bound).toBeCloseTo(film.mean - factor * film.spread.sd, 10);
    expect(gaugeMargin).toBeCloseTo(1.6448536 * film.calibration, 5);
    expect(thinnest).toBe(panel.thinnest);
  });
  it('takes, at the whole budget, the risk that was asked for where the clear binds', () => {
    const { panel, why: parts } = why(fiveAround('tested', 112));
    expect(panel.boundBy.code).toBe('clear');
    expect(parts.risk?.risk).toBeCloseTo(0.05, 8);
    expect(parts.risk?.already).toBeLessThan(0.05);
    expect(parts.risk?.riskIfThin).toBeGreaterThan(0.05);
  });
  it('says nothing of the clear of refinished or unread panels', () => {
    for (const readings of [onFace('tested', 260, 262, 258, 261, 259), []]) {
      const { why: parts } = why(readings);
      expect([parts.clear, parts.risk, parts.doubt]).toEqual([null, null, []]);
    }
  });
  it('has a mean that is uncertain by named sources, and each zone its own', () => {
    const { panel } = why(fiveAround('tested', 112));
    if (panel.uncertainty === null) throw new Error('five points have an uncertainty');
    const sources = uncertaintyBudget(panel.uncertainty);
    expect(sources.map(({ source }) => source)).toContain('calibration');
    expect(sources.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    const mixed = why(onFace('tested', 110, 112, 111, 180, 182, 181)).panel;
    expect(mixed.condition).toBe('mixed');
    expect(mixed.uncertainty).toBeNull();
    expect(mixed.zones.map(({ uncertainty }) => uncertainty === null)).toEqual([false, false]);
    expect(mixed.ashmanD).toBeGreaterThan(2);
  });
});

describe('what points prove whatever the shape of the film', () => {
  const wanted = { content: 0.95, confidence: 0.95 };
  it('takes 59 points for 95 % of the face with 95 % confidence (Wilks 1941, order statistics)', () => {
    expect(distributionFree(5, wanted).pointsNeeded).toBe(59);
  });
  it('is that five points hold 95 % of the face with 23 % confidence only', () => {
    // 1 − .95⁵ = .2262
    expect(distributionFree(5, wanted).confidence).toBeCloseTo(0.2262, 4);
    expect(distributionFree(58, wanted).confidence).toBeLessThan(0.95);
    expect(distributionFree(59, wanted).confidence).toBeGreaterThan(0.95);
  });
});

describe('a value that looks keyed wrongly', () => {
  const keyed = () => amongSound(onFace('tested', 112, 115, 1120, 110, 113)).panel;
  it('is asked about before anything that it leads to', () => {
    const panel = keyed();
    expect(panel.evidence[0]).toMatchObject({
      code: 'keying-slip',
      text: 'point 3 reads 1120 µm, ten times its neighbours: keyed wrongly?',
    });
    expect(panel.condition).toBe('filler');
  });
  it('is never changed', () => {
    const panel = keyed();
    expect(panel.statistics?.max).toBe(1120);
    expect(panel.points.map(({ thickness }) => thickness)).toEqual([112, 115, 1120, 110, 113]);
  });
});
