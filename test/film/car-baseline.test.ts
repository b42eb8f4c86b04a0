import { describe, expect, it } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { zincOf } from '../../src/film/zinc.ts';
import { filmModel } from '../../src/formats/models.ts';
import { amongSound, fiveAround, panelOf, plainPanel, surveyOf } from './car-builder.ts';

const STEEL = ['a', 'b', 'c', 'd'] as const;
const zinc = zincOf(filmModel.layers);

/** Four steel panels at 118 and a bonnet of aluminium. */
const car = (galvanised: boolean, bonnet: number) =>
  surveyOf({
    panels: [
      ...STEEL.map((id) => plainPanel(id)),
      plainPanel('bonnet', { substrate: 'aluminium' }),
    ],
    readings: [...STEEL.flatMap((id) => fiveAround(id, 118)), ...fiveAround('bonnet', bonnet)],
    facts: { galvanised },
  });

describe('the baseline that a panel is held to', () => {
  it('lacks the zinc on an aluminium panel of a galvanised car: 77 − 70 = 7 µm', () => {
    const survey = car(true, 105);
    expect(zinc.mean).toBe(7);
    expect(survey.baseline).toBe(118);
    expect(panelOf(survey, 'a').baseline).toBe(118);
    expect(panelOf(survey, 'bonnet').baseline).toBe(111);
    // 13 µm under 118 would be cut back; 6 µm under 111 is not.
    expect(panelOf(survey, 'bonnet').condition).toBe('original');
    expect(panelOf(car(false, 105), 'bonnet').condition).toBe('cut-back');
  });
  it('is the same for every panel where no steel is galvanised', () => {
    const survey = car(false, 116);
    expect(survey.panels.map(({ baseline }) => baseline)).toEqual([118, 118, 118, 118, 118]);
  });
  it('is made of all panels, brought to the kind that most of them are of', () => {
    // Medians 118 four times and 107 + 7 = 114 of the bonnet; with the bonnet at 112, 119.
    expect(car(true, 107).baseline).toBe(118);
    const few = surveyOf({
      panels: [plainPanel('a'), plainPanel('b'), plainPanel('bonnet', { substrate: 'aluminium' })],
      readings: [...fiveAround('a', 118), ...fiveAround('b', 122), ...fiveAround('bonnet', 113)],
      facts: { galvanised: true },
    });
    // 118, 122 and 113 + 7 = 120.
    expect(few.baseline).toBe(120);
    expect(panelOf(few, 'bonnet').baseline).toBe(113);
  });
  it('is less sure for a panel of the other kind, by what zinc varies between cars', () => {
    const standardOf = (galvanised: boolean) =>
      panelOf(car(galvanised, 112), 'bonnet').sureness?.comparisons.find(
        ({ condition }) => condition === 'cut-back',
      );
    const [mixed, same] = [standardOf(true), standardOf(false)];
    // The gauge errs on the difference alone: 112 − 111 and 112 − 118, 2 % of each over √3.
    const gauge = (difference: number) => ((0.02 * difference) / Math.sqrt(3)) ** 2;
    expect((mixed?.standard ?? 0) ** 2 - gauge(1)).toBeCloseTo(
      (same?.standard ?? 0) ** 2 - gauge(6) + zinc.variance,
      6,
    );
    expect(mixed?.line).toBe(99);
  });
  it('is higher on one galvanised panel of a car that is not, and counts as missing from it', () => {
    const survey = surveyOf({
      panels: [...STEEL, 'e'].map((id) => plainPanel(id)),
      readings: [...STEEL.flatMap((id) => fiveAround(id, 112)), ...fiveAround('e', 105)],
      factsOf: (id) => ({ galvanised: id === 'e' }),
    });
    const panel = panelOf(survey, 'e');
    expect(panel.baseline).toBe(119);
    expect(panel.condition).toBe('cut-back');
    // Nothing was stated as taken before: what is missing is 119 − 105.
    expect(panel.topcoat?.told.film.taken.mean).toBe(14);
  });
});

it('bears a model that knows film with zinc better than film without: zinc adds no doubt then', () => {
  const { layers } = filmModel;
  const surer = { ...layers.galvanisedUnder, sd: micrometres(5) };
  const { panel } = amongSound(fiveAround('tested', 112), {
    factsOf: (id) => ({ galvanised: id === 'tested' }),
    model: { ...filmModel, layers: { ...layers, galvanisedUnder: surer } },
  });
  const cutBack = panel.sureness?.comparisons.find(({ condition }) => condition === 'cut-back');
  const ofZinc = cutBack?.difference.components.get('zinc')?.contribution;
  expect(Math.abs(ofZinc ?? Number.NaN)).toBe(0);
});
