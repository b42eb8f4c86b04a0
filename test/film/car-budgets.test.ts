/** Budgets asked for by themselves: held against a survey of the same car. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { micrometres } from '../../src/base/units.ts';
import { assessFilm } from '../../src/film/assess-film.ts';
import { budgetIn } from '../../src/film/car-budgets.ts';
import { gatherCar, withReadingsOf } from '../../src/film/gathered-car.ts';
import type { Reading } from '../../src/film/reading.ts';
import { partName, partsOf } from '../../src/film/survey.ts';
import type { SurveyRequest } from '../../src/film/survey-request.ts';
import { filmModel } from '../../src/formats/models.ts';
import { inFull } from '../in-full.ts';
import {
  knownFacts,
  onFace,
  plainPanel,
  plainTemplate,
  reading,
  standardTerms,
} from './car-builder.ts';

const NAMES = ['a', 'b', 'c', 'd', 'e', 'f'] as const;

/** Factory film, film cut back, repaint, filler, half of either, one point or none. */
const panelFilm = fc.record({
  centre: fc.constantFrom(96, 104, 112, 112, 118, 150, 240),
  step: fc.constantFrom(0, 0, 0, 0, 45, -40, 500),
  points: fc.integer({ min: 0, max: 9 }),
  noise: fc.array(fc.integer({ min: -60, max: 60 }), { minLength: 9, maxLength: 9 }),
  clear: fc.constantFrom(null, null, null, 42),
});
type PanelFilm = typeof panelFilm extends fc.Arbitrary<infer Drawn> ? Drawn : never;

function readingsOf(panel: string, film: PanelFilm): readonly Reading[] {
  const { centre, step, points, noise, clear } = film;
  const ums = noise
    .slice(0, points)
    .map((tenths, k) => centre + tenths / 10 + (2 * k < points ? 0 : step));
  const layers = clear === null ? [] : [reading(panel, '1', clear, { layer: 'clear' })];
  return [...onFace(panel, ...ums), ...layers];
}

const car = fc.record({
  films: fc.array(panelFilm, { minLength: NAMES.length, maxLength: NAMES.length }),
  changed: panelFilm,
  taken: fc.constantFrom(null, 0, 4),
  finish: fc.constantFrom('clear-over-base' as const, 'unknown' as const),
  galvanised: fc.boolean(),
  ofOthers: fc.boolean(),
});
type Unchanged = Omit<typeof car extends fc.Arbitrary<infer Drawn> ? Drawn : never, 'changed'>;

function requestOf({ films, taken, finish, galvanised, ofOthers }: Unchanged): SurveyRequest {
  const readings = films.flatMap((film, k) => readingsOf(NAMES[k] ?? '', film));
  return {
    template: plainTemplate(...NAMES.map((id) => plainPanel(id))),
    readings,
    baselineReadings: ofOthers ? NAMES.flatMap((id) => onFace(id, 118, 119, 121)) : undefined,
    factsOf: (id) => ({
      ...knownFacts,
      taken: taken === null ? null : micrometres(taken),
      finish,
      galvanised,
      covered: id === 'e',
    }),
    terms: standardTerms,
    model: filmModel,
  };
}

test('a budget by itself is that of the survey, and so it is with other readings on a panel', () => {
  const seen = new Set<string>();
  fc.assert(
    fc.property(car, (drawn) => {
      const request = requestOf(drawn);
      const others = readingsOf('a', drawn.changed);
      const readings = [...others, ...request.readings.filter(({ panel }) => panel !== 'a')];
      const asRead = gatherCar(request);
      const again = withReadingsOf(asRead, 'a', others, request);
      for (const [gathered, { panels }] of [
        [asRead, assessFilm(request)],
        [again, assessFilm({ ...request, readings })],
      ] as const) {
        for (const part of panels.flatMap((panel) => [panel, ...partsOf(panel)])) {
          seen.add(part.zones.length > 0 ? 'two zones' : part.boundBy.code);
          const by = budgetIn(gathered, part, request) - part.budget;
          expect(Math.abs(by), partName(part)).toBeLessThan(1e-6);
        }
      }
    }),
    { numRuns: 40, seed: 7 },
  );
  const all = [
    'two zones',
    'clear',
    'near-line',
    'life',
    'total',
    'test-spot',
    'covered',
    'no-data',
  ];
  if (inFull) expect([...seen]).toEqual(expect.arrayContaining(all));
});

test('a zone that is none any more has what its panel has', () => {
  const sound = ['b', 'c', 'd', 'e'].flatMap((id) => onFace(id, 110, 114, 112, 111, 113));
  const request = {
    ...requestOf({
      films: [],
      taken: 0,
      finish: 'clear-over-base',
      galvanised: false,
      ofOthers: false,
    }),
    readings: [...onFace('a', 111, 112, 113, 190, 191, 192), ...sound],
  };
  const zone = assessFilm(request).panels[0]?.zones.find((one) => one.zone === 'thicker');
  if (zone === undefined) throw new Error('the panel is in two zones');
  const even = onFace('a', 111, 112, 113, 112, 111, 113);
  const then = withReadingsOf(gatherCar(request), 'a', even, request);
  const whole = assessFilm({ ...request, readings: [...even, ...sound] }).panels[0];
  expect(whole?.budget).toBeGreaterThan(1);
  expect(budgetIn(then, zone, request)).toBeCloseTo(whole?.budget ?? Number.NaN, 9);
});
