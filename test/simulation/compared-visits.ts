/**
 * Cars read before and after a known removal, with marked points or without: what a comparison says of
 * it, counted against the truth.
 */

import { assessFilm } from '../../src/film/assess-film.ts';
import { compareSurveys, type SurveyComparison } from '../../src/film/compare/compare-surveys.ts';
import type { PanelComparison } from '../../src/film/compare/panel-comparison.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { Survey } from '../../src/film/survey.ts';
import { correctionModel, filmModel } from '../../src/formats/models.ts';
import { knownFacts, reading, standardTerms } from '../film/car-builder.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { elevenPanels } from './run-cars.ts';
import type { Random } from './true-cars.ts';

export type Visits = {
  readonly marked: boolean;
  /** What truly came off on the mean of a panel, µm. */
  readonly removed: number;
  readonly cars: number;
  readonly seed: number;
  /** Spread of the gauge on one reading, where it is not as the model assumes. */
  readonly repeatability?: number;
  readonly points?: number;
  /** How what comes off varies over a panel, as a share of it; a fifth where it is not given. */
  readonly uneven?: number;
};

export type Count = {
  readonly panels: number;
  /** Shares of the panels: the interval holds the truth; film is said to have come off, or come on. */
  readonly covered: number;
  readonly seen: number;
  readonly gained: number;
  /** The same of the mean over the car. */
  readonly carCovered: number;
  readonly carSeen: number;
  /** Mean of what is said to show half of the time, and nearly always, µm. */
  readonly half: number;
  readonly surely: number;
};

const WITHIN_SD = 5;

export async function runVisits(visits: Visits): Promise<Count> {
  const random = seededRandom(visits.seed);
  const cars: SurveyComparison[] = [];
  while (cars.length < visits.cars) {
    cars.push(runCar(visits, random));
    // The runner wants to hear from a long test now and then.
    await new Promise(setImmediate);
  }
  const panels = cars.flatMap((car) => car.panels);
  const share = <T>(all: readonly T[], of: (one: T) => boolean): number =>
    all.filter(of).length / all.length;
  const { removed } = visits;
  const holds = ({ change }: Pick<PanelComparison, 'change'>): boolean =>
    change !== null && change.low <= removed && removed <= change.high;
  const mean = (of: (one: PanelComparison) => number): number =>
    panels.reduce((sum, one) => sum + of(one), 0) / panels.length;
  return {
    panels: panels.length,
    covered: share(panels, holds),
    seen: share(panels, ({ change }) => change?.resolved === true),
    gained: share(panels, (one) => one.gained),
    carCovered: share(cars, ({ car }) => holds({ change: car })),
    carSeen: share(cars, ({ car }) => car?.resolved === true),
    half: mean(({ change }) => change?.detectable.half ?? 0),
    surely: mean(({ change }) => change?.detectable.surely ?? 0),
  };
}

function runCar(visits: Visits, random: Random): SurveyComparison {
  const { marked, removed, uneven = 0.2 } = visits;
  const calibration = 2 * random() - 1;
  const films = elevenPanels.panels.map(() => 112 + 8 * normal(random));
  const drawn = films.map((film) => pointsOf(film, visits, random));
  const other = films.map((film) => pointsOf(film, visits, random));
  const taken = (film: number): number => film - removed * (1 + uneven * normal(random));
  const before = readAll(drawn, { calibration, visits }, random);
  const after = readAll(
    (marked ? drawn : other).map((panel) => panel.map(taken)),
    { calibration, visits },
    random,
  );
  const is = () => marked;
  return compareSurveys(surveyBefore(before), surveyOf(after), {
    marked: { before: is, after: is },
    gauges: { cancels: true, before: filmModel.measurement, after: filmModel.measurement },
    model: filmModel,
    scatterDof: correctionModel.spot.scatterDof,
  });
}

const pointsOf = (film: number, { points = 5 }: Visits, random: Random): readonly number[] =>
  Array.from({ length: points }, () => film + WITHIN_SD * normal(random));

/** The same calibration before and after: it goes out of what came off. */
const readAll = (
  panels: readonly (readonly number[])[],
  { calibration, visits: { repeatability = 1.5 } }: { calibration: number; visits: Visits },
  random: Random,
): readonly Reading[] =>
  panels.flatMap((films, at) =>
    films.map((film, i) => {
      const read = film + calibration * (1 + 0.02 * film) + repeatability * normal(random);
      return reading(elevenPanels.panels[at]?.id ?? '', `${i + 1}`, Math.round(10 * read) / 10);
    }),
  );

/** Cars of one seed read the same before, whatever comes off them: each is surveyed once. */
const known = new Map<string, Survey>();
const MOST_KNOWN = 200;

function surveyBefore(readings: readonly Reading[]): Survey {
  const values = readings.map(({ thickness }) => thickness).join(' ');
  const survey = known.get(values) ?? surveyOf(readings);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(values, survey);
  return survey;
}

const surveyOf = (readings: readonly Reading[]): Survey =>
  assessFilm({
    template: elevenPanels,
    readings,
    factsOf: () => knownFacts,
    terms: standardTerms,
    model: filmModel,
  });
