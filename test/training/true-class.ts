/** Cars whose film is known, the expert who read them, and trainees: honest ones, and ones with a fault. */
import { type Micrometres, micrometres } from '../../src/base/units.ts';
import { assessFilm } from '../../src/film/assess-film.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { VehicleTemplate } from '../../src/film/template/template.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { usualMarking } from '../../src/formats/data/training-defaults.ts';
import { modelsWith } from '../../src/formats/models-with.ts';
import { plainFacts } from '../../src/tasks/settings/panel-facts.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { type Grade, gradeTrainee } from '../../src/training/grade-trainee.ts';
import type { GradedSurvey } from '../../src/training/graded-survey.ts';
import { expertReference, type Reference } from '../../src/training/reference.ts';
import type { TrainingModel } from '../../src/training/training-model.ts';
import { normal } from '../samples/seeded-random.ts';

export type Random = () => number;

const metal = /^(bonnet|wing|door|quarter|boot|roof)/;
/** The eleven metal panels of the saloon. */
export const template: VehicleTemplate = (() => {
  const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
  if (saloon === undefined) throw new Error('the saloon is built in');
  return { ...saloon, panels: saloon.panels.filter(({ id }) => metal.test(id)) };
})();
export const panelIds: readonly string[] = template.panels.map(({ id }) => id);

export const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });
export const { training: model } = modelsWith(new Map());
export const marking = usualMarking(model);

export type PanelFilm = {
  readonly mean: number;
  readonly sd: number;
  /** Film at the points with a cross on them. */
  readonly marks: readonly number[];
};
export type TrueCar = ReadonlyMap<string, PanelFilm>;

const MARKS = 9;

/** Factory film about a level of its own; a rear quarter painted again, a wing polished thin. */
export function drawCar(random: Random): TrueCar {
  const level = 112 + 8 * normal(random);
  const sd = 3.5 + 2 * random();
  return new Map(
    panelIds.map((id) => {
      const repainted = id === 'quarter-left';
      const mean = repainted ? 260 + 20 * normal(random) : level + 5 * normal(random);
      const own = repainted ? 14 : sd;
      const marks = Array.from({ length: MARKS }, () => mean + own * normal(random));
      if (id === 'wing-front-right') marks[3] = mean - 32;
      return [id, { mean, sd: own, marks }] as const;
    }),
  );
}

export type Habit = {
  readonly points: number;
  readonly repeats: number;
  readonly marked: boolean;
  /** SD of a reading set down again. */
  readonly repeatability: number;
  /** What the hand adds everywhere. */
  readonly bias: number;
  /** Step of the display. */
  readonly step: number;
};

export const usualHabit: Habit = {
  points: 5,
  repeats: 1,
  marked: false,
  repeatability: 1.5,
  bias: 0,
  step: 0.1,
};

/** Points of one's own are new places on the panel, and marked ones the same as everybody's. */
export function readCar(
  random: Random,
  car: TrueCar,
  habit: Habit,
  file = 'a.csv',
): readonly Reading[] {
  let line = 1;
  return [...car].flatMap(([panel, { mean, sd, marks }]) =>
    Array.from({ length: habit.points }, (_, k) => {
      const film = habit.marked ? (marks[k] ?? mean) : mean + sd * normal(random);
      return Array.from({ length: habit.repeats }, (__, r) => {
        const value = film + habit.bias + habit.repeatability * normal(random);
        line += 1;
        return readingAt(panel, `${k + 1}`, r + 1, rounded(value, habit.step), {
          marked: habit.marked,
          file,
          line,
        });
      });
    }).flat(),
  );
}

export const rounded = (value: number, step: number): number =>
  Number((Math.round(value / step) * step).toFixed(4));

export const readingAt = (
  panel: string,
  point: string,
  repeat: number,
  thickness: number,
  { marked = false, file = 'a.csv', line = 2 } = {},
): Reading => ({
  vehicle: null,
  panel,
  point,
  repeat,
  thickness: micrometres(thickness),
  layer: '',
  place: 'face',
  marked,
  curved: false,
  origin: { file, line, column: 1 },
});

/** `heldTo` makes the baseline, as a reference does for the surveys that are graded against it. */
export const surveyOf = (
  readings: readonly Reading[],
  repeatability: Micrometres = settings.film.measurement.repeatability,
  heldTo?: Reference,
): GradedSurvey => ({
  survey: assessFilm({
    template,
    readings,
    baselineReadings: heldTo?.expert?.readings,
    factsOf: () => plainFacts(settings.facts),
    terms: settings.terms,
    model: settings.film,
  }),
  readings,
  repeatability,
});

export const sigmaPt = { value: model.scores.sigmaPt, from: 'stated' } as const;
export const oneGauge = { same: true, stated: false } as const;

export const gradeAgainst = (
  trainee: GradedSurvey,
  reference: Reference,
  by: TrainingModel = model,
): Grade => gradeTrainee({ trainee, reference, sigmaPt, gauges: oneGauge, marking, model: by });

export const expertOf = (random: Random, car: TrueCar, habit: Habit = usualHabit): Reference =>
  expertReference(surveyOf(readCar(random, car, habit, 'reference.csv')));

/** The same readings with some of them changed. */
export const changed = (
  readings: readonly Reading[],
  change: (reading: Reading, index: number) => number,
): readonly Reading[] =>
  readings.map((reading, i) => ({ ...reading, thickness: micrometres(change(reading, i)) }));
