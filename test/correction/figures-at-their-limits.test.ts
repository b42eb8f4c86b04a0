/** What is said where a figure lies just at its limit, and of failed clear beside what else limits a panel. */
import { expect, test } from 'vitest';
import { degreesCelsius } from '../../src/base/units.ts';
import { heatCautions } from '../../src/correction/heat/heat-cautions.ts';
import { foretellEach, foretellingRecord } from '../../src/correction/rates/rate-foretelling.ts';
import { ladder } from '../../src/correction/removal/combination.ts';
import { chanceWithin, spotLadder } from '../../src/correction/spot/spot-ladder.ts';
import { correctionModel } from '../../src/formats/models.ts';
import { amongSound, fiveAround, plainPanel, surveyOf } from '../film/car-builder.ts';
import { measured, usualPriors } from './rates-drawn.ts';
import { defect, planned, planOf, shopWith, untried } from './shop.ts';
import { combination, model, trial } from './spot-trials.ts';

test('a panel as warm as the caution is to cool before any step, and no faster arm would keep it so', () => {
  const { caution } = correctionModel.heat;
  const combination = ladder(correctionModel).find(({ id }) => id === 'da/foam-medium/medium');
  if (combination === undefined) throw new Error('the combination is built in');
  const textAt = (start: number) =>
    heatCautions('steel', [{ combination, sets: 3 }], {
      ...correctionModel,
      heat: {
        ...correctionModel.heat,
        start: degreesCelsius(start),
        room: degreesCelsius(start),
      },
    })[0]?.text;
  expect(textAt(caution)).toMatch(/let it cool from 43 °C before any step$/u);
  expect(textAt(caution - 0.1)).not.toContain('before any step');
});

test('readings are foretold within their range from its lower end to its upper one, both among them', () => {
  const evidence = ['a', 'b', 'c', 'd'].flatMap((vehicle) => [
    measured(vehicle, 'k', 1.8, 2.4, 0.4),
    measured(vehicle, 'l', 0.9, 0.8, 0.4),
  ]);
  const each = foretellEach(evidence, usualPriors);
  const within = (...places: readonly number[]) =>
    foretellingRecord(each.map((one, i) => ({ ...one, place: places[i] ?? 0.5 })))?.within;
  expect(within()).toBe(8);
  expect(within(0.05, 0.95, 0.3)).toBe(8);
  expect(within(0.049, 0.951, 0, 1)).toBe(4);
});

test('failed clear is the limit of its panel, told once, and the other limits stay', () => {
  const planOn = (clearCoatFailure: boolean, grade: number) =>
    planned(
      planOf(
        surveyOf({
          panels: ['a', 'b', 'c'].map((id) => plainPanel(id)),
          readings: ['a', 'b', 'c'].flatMap((id) => fiveAround(id, 112)),
          factsOf: (id) => ({ clearCoatFailure: clearCoatFailure && id === 'a' }),
        }),
        { defectsOf: () => [defect('swirl-marks', 3), defect('clear-coat-failure', grade)] },
      ),
      'a',
    );
  const codesOf = ({ survey }: ReturnType<typeof planOn>) => survey.limits.map(({ code }) => code);
  const sound = codesOf(planOn(false, 0));
  expect(sound.length).toBeGreaterThan(1);
  expect(sound).not.toContain('clear-coat-failure');
  for (const [stated, grade] of [
    [false, 2],
    [true, 0],
    [true, 2],
  ] as const) {
    const plan = planOn(stated, grade);
    expect(plan.verdict).toBe('refinish');
    expect(codesOf(plan).toSorted()).toEqual([...sound, 'clear-coat-failure'].toSorted());
    expect([plan.survey.budget, plan.survey.boundBy.code]).toEqual([0, 'clear-coat-failure']);
  }
});

test('a spot is worked that clears just so much more than nothing as is worth its film', () => {
  const { survey } = amongSound(fiveAround('tested', 112));
  const shop = shopWith('da', 'da-small');
  const spotWorth = (leastCorrection: number) =>
    planned(
      planOf(survey, {
        // No marks over the panel: the spot alone clears anything.
        defectsOf: () => [defect('swirl-marks', 0), defect('deep-scratches', 2)],
        model: { ...shop, correction: { ...shop.correction, leastCorrection } },
      }),
      'tested',
    ).local[0];
  const cleared = spotWorth(0.1)?.cleared ?? Number.NaN;
  expect(cleared).toBeGreaterThan(0.1);
  expect(spotWorth(cleared)).toMatchObject({ cleared });
  expect(spotWorth(cleared)?.steps).toHaveLength(1);
  expect(spotWorth(cleared + 1e-9)).toMatchObject({ cleared: 0, steps: [] });
});

test('a combination with just the least chance that is worth a trial stays open after one set', () => {
  const id = 'da/foam-medium/medium';
  const known = { paint: untried, defect: defect('swirl-marks', 3), aim: 0.85 };
  const chance = chanceWithin(combination(id), model.spot.sets, { ...known, model });
  const stateWith = (leastChance: number) =>
    spotLadder({
      ...known,
      trials: [trial(id, { cleared: 0.6, sets: 1 })],
      budgetAt: null,
      model: { ...model, spot: { ...model.spot, leastChance } },
    }).find((rung) => rung.combination.id === id)?.state;
  expect(stateWith(chance)).toBe('open');
  expect(stateWith(chance + 1e-12)).toBe('too-mild');
});
