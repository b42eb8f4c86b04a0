/** What came off a car: the mean over its panels, each by its area. */
import { expect, test } from 'vitest';
import { micrometres, squareMetres } from '../../../src/base/units.ts';
import { compareSurveys } from '../../../src/film/compare/compare-surveys.ts';
import { filmModel } from '../../../src/formats/models.ts';
import { fiveAround, plainPanel, surveyOf } from '../car-builder.ts';

const AREAS = { mirror: 0.5, roof: 1.5, bonnet: 2 } as const;
type Films = Readonly<Record<keyof typeof AREAS, number>>;

const survey = (films: Films) =>
  surveyOf({
    panels: Object.entries(AREAS).map(([id, area]) => plainPanel(id, { area: squareMetres(area) })),
    readings: Object.entries(films).flatMap(([id, um]) => fiveAround(id, um)),
  });

const measurement = { ...filmModel.measurement, fixed: micrometres(0), proportional: 0 };

test('a panel of three times the area counts three times as much', () => {
  const { car } = compareSurveys(
    survey({ mirror: 112, roof: 112, bonnet: 112 }),
    survey({ mirror: 104, roof: 110, bonnet: 111 }),
    {
      gauges: { cancels: true, before: measurement, after: measurement },
      marked: { before: () => true, after: () => true },
      model: filmModel,
      scatterDof: 10,
    },
  );
  // (.5·8 + 1.5·2 + 2·1)/4.
  expect(car?.removed.value).toBeCloseTo(9 / 4, 9);
});
