import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometres } from '../../../src/base/units.ts';
import { isZone, type PanelSurvey } from '../../../src/film/survey.ts';
import { filmModel } from '../../../src/formats/models.ts';
import {
  amongSound,
  byItself,
  fiveAround,
  onFace,
  panelOf,
  plainPanel,
  reading,
  surveyOf,
} from '../car-builder.ts';

const around = (centre: number, ...offsets: readonly number[]) =>
  onFace('tested', ...offsets.map((one) => centre + one));
const OFFSETS = [-4, 4, -4, 0, 4] as const;
/** No floor of the total that film of these tests comes near. */
const noFloor = { terms: { totalFloor: micrometres(1) } };

const surenessOf = ({ sureness }: PanelSurvey) => {
  if (sureness === null) throw new Error('a figure decides it');
  return sureness;
};
const decidingOf = (panel: PanelSurvey) => surenessOf(panel).deciding;

describe('how sure the condition of a panel is', () => {
  it('hangs for a repaint on its median, over the baseline by 40 µm or more', () => {
    const { panel } = amongSound(around(157, ...OFFSETS));
    expect(panel.condition).toBe('refinished');
    expect(decidingOf(panel)).toMatchObject({
      compared: 'median',
      condition: 'refinished',
      figure: 157,
      line: 152,
      baseline: 112,
      isBeyond: true,
    });
  });
  it('takes the median to be √(π/2) as uncertain as the mean, the gauge on the difference alone', () => {
    const { panel } = amongSound(around(157, ...OFFSETS));
    const sources = panel.uncertainty?.components;
    const own = ['film', 'repeatability', 'resolution'].map(
      (one) => sources?.get(one)?.contribution,
    );
    // The four sound panels and the tested one: medians 112 112 112 112 157, whose middle deviation is 0.
    const expected = Math.hypot(
      Math.sqrt(Math.PI / 2) * Math.hypot(...own.map((one) => one ?? Number.NaN)),
      (0.02 * (157 - 112)) / Math.sqrt(3),
    );
    expect(decidingOf(panel).standard).toBeCloseTo(expected, 8);
  });
  it('counts the scatter of the panels that make the baseline, as far as these tell it against what cars do', () => {
    const cars = (others: readonly number[]) =>
      surveyOf({
        panels: ['a', 'b', 'c', 'd', 'tested'].map((id) => plainPanel(id)),
        readings: [
          ...['a', 'b', 'c', 'd'].flatMap((id, i) => fiveAround(id, others[i] ?? 0)),
          ...around(95, ...OFFSETS),
        ],
        ...noFloor,
      });
    const mean = (others: readonly number[]) =>
      surenessOf(panelOf(cars(others), 'tested')).comparisons.find(
        ({ compared }) => compared === 'mean',
      )?.standard ?? Number.NaN;
    // Medians 106 110 112 118 and 95: middle 110, deviations 4 0 2 8 15, middle deviation 4.
    // b_5 = 1.206 on .37·4 degrees of freedom. Panels vary about their car by half of 6² + 10² less 5 % of 112 µm over
    // one panel, on 4.
    const own = 0.37 * 4;
    const varianceOf = (middle: number) =>
      (4 * 0.5 * (36 + 100 - (0.05 * 112) ** 2) + own * (1.4826 * 1.206 * middle) ** 2) / (4 + own);
    const scattered = (middle: number) => ((Math.PI / 2) * varianceOf(middle)) / 5;
    const gauge = (from: number) => (0.02 * (from - 95)) / Math.sqrt(3);
    expect(mean([106, 110, 112, 118]) ** 2 - gauge(110) ** 2).toBeCloseTo(
      mean([112, 112, 112, 112]) ** 2 - gauge(112) ** 2 + scattered(4) - scattered(0),
      8,
    );
  });
  it('is near the line over a 5 % chance of the other side, or what a shop sets', () => {
    const near = amongSound(around(154, ...OFFSETS)).panel;
    const clear = amongSound(around(172, ...OFFSETS)).panel;
    expect([surenessOf(near).sure, surenessOf(clear).sure]).toEqual(['near', 'clear']);
    const chance = decidingOf(near).otherSide;
    expect(chance).toBeGreaterThan(0.05);
    const conditions = { ...filmModel.conditions, nearRisk: chance };
    const asked = amongSound(around(154, ...OFFSETS), {
      model: { ...filmModel, conditions },
    }).panel;
    expect(surenessOf(asked).sure).toBe('clear');
  });
  it('hangs for original film on the nearest of all lines', () => {
    const { panel } = amongSound(around(101, ...OFFSETS));
    expect(panel.condition).toBe('original');
    expect(decidingOf(panel)).toMatchObject({ compared: 'mean', line: 100, isBeyond: false });
    const { comparisons } = surenessOf(panel);
    expect(comparisons.map(({ otherSide }) => otherSide)).toEqual(
      comparisons.map(({ otherSide }) => otherSide).sort((a, b) => b - a),
    );
    expect(new Set(comparisons.map(({ condition }) => condition))).toEqual(
      new Set(['filler', 'mixed', 'refinished', 'thin', 'cut-back']),
    );
  });
  it('hangs for thin film on the firmer of its smallest point and its thinnest credible film', () => {
    const { panel } = amongSound(around(83, ...OFFSETS));
    expect(panel.condition).toBe('thin');
    const thin = surenessOf(panel).comparisons.filter(({ condition }) => condition === 'thin');
    expect(thin.map(({ compared }) => compared)).toEqual(['thinnest']);
    expect(decidingOf(panel).figure).toBe(panel.thinnest);
  });
  it('hangs for two zones on the nearer of their distance and the gap between them', () => {
    const near = amongSound(onFace('tested', 110, 150, 112, 131, 114)).panel;
    expect(near.condition).toBe('mixed');
    expect(decidingOf(near)).toMatchObject({ compared: 'halves-apart', figure: 28.5, line: 25 });
    const slope = amongSound(onFace('tested', 88, 90, 113, 114, 126, 127, 150, 152)).panel;
    expect(slope.condition).toBe('mixed');
    expect(decidingOf(slope)).toMatchObject({ compared: 'halves-gap', figure: 12, line: 10 });
  });
  it('asks of a zone by itself no more whether it is two', () => {
    const { zones } = amongSound(onFace('tested', 110, 150, 112, 131, 114)).panel;
    const [thinner, thicker] = zones;
    // The thicker one is repaint because there are two: no line of its own decides that.
    expect([thicker?.condition, thicker?.sureness]).toEqual(['refinished', null]);
    const asked = thinner === undefined ? [] : surenessOf(thinner).comparisons;
    expect(asked.length).toBeGreaterThan(2);
    expect(asked.some(({ condition }) => condition === 'mixed')).toBe(false);
  });
  it('hangs for one zone on the firmer of what speaks against two', () => {
    const { panel } = amongSound(onFace('tested', 108, 110, 112, 124, 126));
    const mixed = surenessOf(panel).comparisons.filter(({ condition }) => condition === 'mixed');
    expect(mixed).toHaveLength(1);
    expect(mixed[0]).toMatchObject({ compared: 'halves-apart', figure: 15, line: 25 });
  });
  it('puts no question of two zones where a side would have one point, or both would be repaint', () => {
    const asked = (...ums: readonly number[]) =>
      surenessOf(amongSound(onFace('tested', ...ums)).panel).comparisons.some(
        ({ condition }) => condition === 'mixed',
      );
    expect(asked(110, 111, 112, 113, 130)).toBe(false);
    expect(asked(230, 233, 240, 244, 231)).toBe(false);
    expect(asked(110, 111, 112, 129, 130)).toBe(true);
  });
  it('draws the line of a repaint from the share where that is more than the step', () => {
    const survey = surveyOf({
      panels: ['a', 'b', 'c', 'd', 'tested'].map((id) => plainPanel(id)),
      readings: [
        ...['a', 'b', 'c', 'd'].flatMap((id, i) => fiveAround(id, 130 + 2 * i)),
        ...around(190, ...OFFSETS),
      ],
    });
    const relative = surenessOf(panelOf(survey, 'tested')).comparisons[0];
    // Medians 130 132 134 136 190, middle 134: 1.35 × 134.
    expect(relative).toMatchObject({ compared: 'median', baseline: 134 });
    expect(relative?.line).toBeCloseTo(180.9, 10);
  });
  it('has one line for a repaint: that for any car where the baseline’s lies higher', () => {
    const survey = surveyOf({
      panels: ['a', 'b', 'c', 'd', 'tested'].map((id) => plainPanel(id)),
      readings: [
        ...['a', 'b', 'c', 'd'].flatMap((id) => fiveAround(id, 160)),
        ...around(210, ...OFFSETS),
      ],
    });
    const lines = surenessOf(panelOf(survey, 'tested')).comparisons.filter(
      ({ compared }) => compared === 'median',
    );
    // 1.35 × 160 = 216.
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatchObject({ line: 200, baseline: null, isBeyond: true });
  });
  it('tells of every word beside the first what that hangs on, and of no other', () => {
    const { panel } = amongSound(around(82, ...OFFSETS));
    expect([panel.condition, ...panel.also]).toEqual(['thin', 'cut-back']);
    expect(surenessOf(panel).beside).toHaveLength(1);
    expect(surenessOf(panel).beside[0]).toMatchObject({
      condition: 'cut-back',
      figure: 82,
      line: 100,
      isBeyond: true,
    });
    expect(surenessOf(amongSound(around(112, ...OFFSETS)).panel).beside).toEqual([]);
  });
  it('holds two zones against SDs of the others where those are more, uncertain as they are', () => {
    const others = ['a', 'b', 'c', 'd', 'e'];
    const wide = (id: string) => onFace(id, 98, 126, 98, 112, 126);
    const survey = surveyOf({
      panels: [...others, 'tested'].map((id) => plainPanel(id)),
      readings: [...others.flatMap(wide), ...onFace('tested', 90, 92, 94, 134, 136, 138)],
    });
    const mixed = surenessOf(panelOf(survey, 'tested')).comparisons.filter(
      ({ condition }) => condition === 'mixed',
    );
    // Five panels of variance 196 on 4 degrees each: SD 14 on 20; 4 × 14 = 56 > 44, 1.5 × 14 = 21 < 40.
    expect(mixed).toHaveLength(1);
    expect(mixed[0]).toMatchObject({ compared: 'halves-apart', figure: 44, isBeyond: false });
    expect(mixed[0]?.line).toBeCloseTo(56, 8);
    expect(mixed[0]?.standard).toBeCloseTo(
      Math.hypot(14 * Math.sqrt(2 / 3), 56 / Math.sqrt(40), (0.02 * 44) / Math.sqrt(3)),
      8,
    );
  });
  it('is less sure of a point that lies on a curve', () => {
    const flat = around(240, 0, 0, 280);
    const read = (curved: boolean) =>
      decidingOf(amongSound(flat.map((one) => ({ ...one, curved }))).panel);
    expect(read(false)).toMatchObject({ compared: 'largest-point', figure: 520, line: 500 });
    expect(read(true).standard).toBeCloseTo(Math.hypot(read(false).standard, 1), 10);
  });
  it('is no matter of a line where nobody read it, or the job declares it covered', () => {
    expect(amongSound([]).panel.sureness).toBeNull();
    expect(
      amongSound(around(112, ...OFFSETS), { factsOf: () => ({ covered: true }) }).panel.sureness,
    ).toBeNull();
  });
  it('holds a panel that stands alone against what factories paint, and where one vouches for itself against no baseline', () => {
    const alone = { panels: [plainPanel('tested')], readings: around(112, ...OFFSETS) };
    const baselines = (model = filmModel) =>
      surenessOf(panelOf(surveyOf({ ...alone, model }), 'tested')).comparisons.map(
        ({ baseline }) => baseline,
      );
    expect(baselines()).toContain(112);
    expect(baselines(byItself).every((baseline) => baseline === null)).toBe(true);
    expect(baselines(byItself).length).toBeGreaterThan(2);
  });
  it('is told of a single point too, by its own scatter, without a thinnest film', () => {
    const { panel } = amongSound([reading('tested', '1', 101)]);
    expect(surenessOf(panel).sure).toBe('near');
    expect(surenessOf(panel).comparisons.some(({ compared }) => compared === 'thinnest')).toBe(
      false,
    );
  });
  it('is near the line where a value looks keyed wrongly', () => {
    const { panel } = amongSound(onFace('tested', 112, 115, 1120, 110, 113));
    expect(panel.condition).toBe('filler');
    expect(surenessOf(panel).sure).toBe('near');
  });
});

/** Chance that the truth lies on the other side of the line of its own condition. */
const ownLine = (panel: PanelSurvey): number =>
  surenessOf(panel).comparisons.find(({ condition }) => condition === panel.condition)?.otherSide ??
  Number.NaN;

describe('moving film away from its line', () => {
  // In whole micrometres from a tenth, so that the display's step, which is read off the data, stays the same.
  const step = fc.integer({ min: 0, max: 40 });
  const shape = fc.array(
    fc.integer({ min: -9, max: 9 }).map((one) => one + 0.1),
    { minLength: 3, maxLength: 9 },
  );
  const never = (build: (shift: number, offsets: readonly number[]) => PanelSurvey, word: string) =>
    fc.assert(
      fc.property(shape, step, step, (offsets, first, more) => {
        const [here, away] = [build(first, offsets), build(first + more, offsets)];
        fc.pre(here.condition === word && away.condition === word);
        expect(ownLine(away)).toBeLessThanOrEqual(ownLine(here));
      }),
    );
  it('never makes a repaint less sure', () => {
    never((by, offsets) => amongSound(around(156 + by, ...offsets)).panel, 'refinished');
  });
  it('never makes a panel that was cut before less sure', () => {
    never((by, offsets) => amongSound(around(98 - by, ...offsets), noFloor).panel, 'cut-back');
  });
  it('never makes filler less sure', () => {
    never(
      (by, offsets) =>
        amongSound(onFace('tested', 501 + by, ...offsets.map((one) => 240 + one))).panel,
      'filler',
    );
  });
  it('never makes thin film less sure', () => {
    never((by, offsets) => amongSound(around(78 - by, ...offsets)).panel, 'thin');
  });
  it('never makes two zones less sure', () => {
    never((by, offsets) => {
      const thicker = offsets.map((one) => 145 + by + one);
      return amongSound(onFace('tested', 109, 112, 115, ...thicker)).panel;
    }, 'mixed');
  });
});

describe('the comparisons of any panel', () => {
  it('agree with its word: those of the word beyond their line, those that go before it not', () => {
    const film = fc.array(fc.integer({ min: 60, max: 560 }), { minLength: 1, maxLength: 9 });
    const close = fc.array(fc.integer({ min: 70, max: 170 }), { minLength: 1, maxLength: 9 });
    fc.assert(
      fc.property(fc.oneof(film, close), (ums) => {
        const { panel } = amongSound(onFace('tested', ...ums));
        for (const part of [panel, ...panel.zones]) {
          if (isZone(part) && part.condition === 'refinished' && part.sureness === null) continue;
          const { comparisons } = surenessOf(part);
          for (const one of comparisons) {
            expect(one.isBeyond).toBe(one.condition === part.condition);
          }
          expect(
            part.condition === 'original' || comparisons.some(({ isBeyond }) => isBeyond),
          ).toBe(true);
        }
      }),
    );
  });
});
