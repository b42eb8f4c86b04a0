/**
 * Cars that come back: each visit they are read at the same marked points, planned with the film record
 * of the visits before, polished, and read again; what was measured goes into the record.
 */

import { micrometres } from '../../src/base/units.ts';
import { planCorrection } from '../../src/correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../src/correction/plan/plan-request.ts';
import { paintKnowledge } from '../../src/correction/removal/removal-knowledge.ts';
import { assessFilm } from '../../src/film/assess-film.ts';
import type { PanelFacts, RecordedRemoval } from '../../src/film/film-model.ts';
import type { Reading } from '../../src/film/reading.ts';
import { plainFacts } from '../../src/tasks/settings/panel-facts.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { takenInAll } from '../../src/tasks/survey/taken-in-all.ts';
import { reading } from '../film/car-builder.ts';
import { normal, seededRandom } from '../samples/seeded-random.ts';
import { elevenPanels } from './run-cars.ts';
import { drawPaint, type Random, type World } from './true-cars.ts';

/** Thinnest published factory clear 35 less 12.7, and 12.7 itself (GM 1991). */
const CLEAR_FLOOR = 22.3;
const LIFE = 12.7;
/** As the model assumes: SD 6 and 10 over all points, of which √12.5 within a panel each. */
const WITHIN_SD = Math.sqrt(12.5);
const CLEAR_SD = Math.sqrt(36 - 12.5);
const UNDER_SD = Math.sqrt(100 - 12.5);
const POINTS = 5;
const REPEATABILITY = 1.5;
const Z_05 = 1.6448536;

type PanelState = {
  readonly id: string;
  readonly clear: number;
  /** Total film at each point before the first visit. */
  readonly film: readonly number[];
  removed: number;
  readonly recorded: RecordedRemoval[];
};

type CarState = {
  readonly panels: readonly PanelState[];
  readonly removedBy: ReturnType<typeof drawPaint>;
};

function drawCar(random: Random): CarState {
  const panels = elevenPanels.panels.map(({ id }) => {
    const clear = 42 + CLEAR_SD * normal(random);
    const under = 70 + UNDER_SD * normal(random);
    const film = Array.from(
      { length: POINTS },
      () => clear + under + WITHIN_SD * (normal(random) + normal(random)),
    );
    return { id, clear, film, removed: 0, recorded: [] };
  });
  return { panels, removedBy: drawPaint({ softness: 1 } as World, random) };
}

/** One calibration a visit, the same before and after: it goes out of what was taken. */
const readAt = (panel: PanelState, calibration: number, random: Random): readonly number[] =>
  panel.film.map((before) => {
    const film = before - panel.removed;
    return film + calibration * (1 + 0.02 * film) + REPEATABILITY * normal(random);
  });

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export type VisitCount = {
  worked: number;
  /** Of those worked: clear on the thinnest 5 % under the floor afterwards. */
  breached: number;
  /** More taken in all than may ever be. */
  overLife: number;
  taken: number;
};

/** What became of the panels at each visit; history known, or the record left at home. */
export function runVisits(
  visits: number,
  cars: number,
  seed: number,
  keepsRecord = true,
): readonly VisitCount[] {
  const random = seededRandom(seed);
  const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });
  const paint = paintKnowledge([], settings.hardness, settings.correction);
  const swirls = settings.correction.defects.find(({ id }) => id === 'swirl-marks');
  if (swirls === undefined) throw new Error('swirl marks are built in');
  const all = Array.from({ length: cars }, () => drawCar(random));
  return Array.from({ length: visits }, () => {
    const before = all.map((car) => {
      const calibration = 2 * random() - 1;
      const values = car.panels.map((panel) => readAt(panel, calibration, random));
      const survey = surveyOf(car, values, settings, keepsRecord);
      return { car, calibration, values, survey };
    });
    const request: Omit<PlanRequest, 'panels'> = {
      defectsOf: () => [
        { kind: swirls, grade: settings.correction.correction.assumedGrade, depth: null },
      ],
      aim: settings.aim.share,
      hazeAllowed: settings.hazeAllowed,
      paintOf: () => paint,
      allowanceAt: (part) => part,
      model: settings.correction,
      thinnerClear: settings.film.thinnerClear,
      edgeWidth: settings.film.edgeWidth,
    };
    const plans = before.flatMap(
      ({ survey }) => planCorrection({ ...request, panels: survey.panels }).panels,
    );
    const count: VisitCount = { worked: 0, breached: 0, overLife: 0, taken: 0 };
    before.forEach(({ car, calibration, values }, index) => {
      car.panels.forEach((panel, at) => {
        const plan = plans[index * car.panels.length + at];
        if (plan === undefined || plan.steps.length === 0) return;
        const taken = car.removedBy(plan);
        panel.removed += taken;
        const after = readAt(panel, calibration, random);
        const difference = mean(values[at] ?? []) - mean(after);
        const sd = REPEATABILITY * Math.sqrt(2 / POINTS);
        panel.recorded.push({ mean: micrometres(difference), sd: micrometres(sd) });
        count.worked += 1;
        count.taken += taken;
        if (panel.clear - panel.removed - Z_05 * WITHIN_SD < CLEAR_FLOOR) count.breached += 1;
        if (panel.removed > LIFE) count.overLife += 1;
      });
    });
    return count;
  });
}

function surveyOf(
  car: CarState,
  values: readonly (readonly number[])[],
  settings: ReturnType<typeof resolveSettings>,
  keepsRecord: boolean,
) {
  const known: PanelFacts = { ...plainFacts(settings.facts), taken: micrometres(0) };
  const recorded = new Map(
    car.panels.flatMap((panel) =>
      keepsRecord && panel.recorded.length > 0 ? [[panel.id, takenInAll(panel.recorded)]] : [],
    ),
  );
  const readings: readonly Reading[] = car.panels.flatMap(({ id }, at) =>
    (values[at] ?? []).map((value, i) => reading(id, `${i + 1}`, Math.round(value * 10) / 10)),
  );
  return assessFilm({
    template: elevenPanels,
    readings,
    factsOf: (id) => ({ ...known, recorded: recorded.get(id) ?? null }),
    terms: settings.terms,
    model: settings.film,
  });
}
