/** A car as it is compared with all points, and without those that stand out. */
import { expect, test } from 'vitest';
import {
  compareSurveys,
  withAllPoints,
  withoutPointsApart,
} from '../../../src/film/compare/compare-surveys.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { fiveAround, plainPanel, surveyOf } from '../car-builder.ts';

const IDS = ['roof', 'door', 'wing'];
const survey = (centre: number) =>
  surveyOf({
    panels: IDS.map((id) => plainPanel(id)),
    readings: IDS.flatMap((id) => fiveAround(id, centre)),
  });

test('each panel with points apart is taken the way that is asked for, and the others as they are', () => {
  const gauge = filmModel.measurement;
  const car = compareSurveys(survey(112), survey(110), {
    gauges: { cancels: true, before: gauge, after: gauge },
    marked: { before: () => true, after: () => true },
    model: filmModel,
    scatterDof: 10,
  });
  const [first, second, third] = car.panels;
  if (first === undefined || second === undefined || third === undefined)
    throw new Error('three panels were read twice');
  const named = (name: string) => ({ ...first, panel: { ...first.panel, name } });
  const withAll = { ...first, apart: { points: [], counted: true, otherwise: named('without') } };
  const without = { ...second, apart: { points: [], counted: false, otherwise: named('with') } };
  const mixed = { ...car, panels: [withAll, without, third] };
  expect(withAllPoints(mixed).panels).toEqual([withAll, named('with'), third]);
  expect(withoutPointsApart(mixed).panels).toEqual([named('without'), without, third]);
  expect(third.apart).toBeNull();
});
