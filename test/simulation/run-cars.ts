/** Runs true cars through survey and plan at the defaults and counts what became of their clear. */
import type { Defect } from '../../src/correction/defects.ts';
import type { PanelPlan } from '../../src/correction/plan/plan.ts';
import { planCorrection } from '../../src/correction/plan/plan-correction.ts';
import type { PlanRequest } from '../../src/correction/plan/plan-request.ts';
import { paintKnowledge } from '../../src/correction/removal/removal-knowledge.ts';
import { assessFilm } from '../../src/film/assess-film.ts';
import type { VehicleTemplate } from '../../src/film/template/template.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { filmModel } from '../../src/formats/models.ts';
import { plainFacts } from '../../src/tasks/settings/panel-facts.ts';
import { resolveSettings, type Settings } from '../../src/tasks/settings/settings.ts';
import { seededRandom } from '../samples/seeded-random.ts';
import { drawCar, drawPaint, type Random, type TrueCar, type World } from './true-cars.ts';

/** What must be left on the thinnest 5 %: thinnest published factory clear 35 less 12.7 (GM 1991). */
const CLEAR_FLOOR = 22.3;
/** A panel with so much above the floor before the work ought to be workable. */
const TRULY_FREE = 4;

export type Outcome = {
  readonly panels: number;
  readonly worked: number;
  /** Of the panels worked: clear under the floor on the thinnest 5 % afterwards. */
  readonly breached: number;
  readonly alreadyUnder: number;
  /** Mean of the risks that the plan states on the panels worked. */
  readonly statedRisk: number;
  /** Mean of what they state for a clear 6 µm thinner. */
  readonly statedIfThin: number;
  readonly free: number;
  /** Of the free ones: polish or lighter. */
  readonly freeWorked: number;
  readonly freePolish: number;
};

const ELEVEN = /^(bonnet|wing|door|quarter|boot|roof)/;

/** The metal panels of the saloon that take a full-size pad: eleven of them. */
export const elevenPanels: VehicleTemplate = (() => {
  const saloon = builtInTemplates.find(({ id }) => id === 'saloon');
  if (saloon === undefined) throw new Error('the saloon is built in');
  return { ...saloon, panels: saloon.panels.filter(({ id }) => ELEVEN.test(id)) };
})();

/** Cars drawn, and the plan of each at the defaults, swirl marks on every panel, no test spot. */
export function planCars(
  world: World,
  cars: number,
  random: Random,
): readonly { readonly car: TrueCar; readonly plans: readonly PanelPlan[] }[] {
  const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });
  const paint = paintKnowledge([], settings.hardness, settings.correction);
  const request: Omit<PlanRequest, 'panels'> = {
    defectsOf: () => [assumedSwirls(settings)],
    aim: settings.aim.share,
    hazeAllowed: settings.hazeAllowed,
    paintOf: () => paint,
    allowanceAt: (part) => part,
    model: settings.correction,
    thinnerClear: filmModel.thinnerClear,
    edgeWidth: filmModel.edgeWidth,
  };
  const drawn = Array.from({ length: cars }, () => drawCar(elevenPanels, world, random));
  return drawn.map((car) => {
    const { panels } = assessFilm({
      template: elevenPanels,
      readings: car.readings,
      factsOf: () => plainFacts(settings.facts),
      terms: settings.terms,
      model: filmModel,
    });
    return { car, plans: planCorrection({ ...request, panels }).panels };
  });
}

/** What is planned for where nothing is recorded. */
export function assumedSwirls({ correction }: Settings): Defect {
  const kind = correction.defects.find(({ id }) => id === 'swirl-marks');
  if (kind === undefined) throw new Error('swirl marks are built in');
  return { kind, grade: correction.correction.assumedGrade, depth: null };
}

export function runCars(world: World, cars: number, seed: number): Outcome {
  const random = seededRandom(seed);
  const planned = planCars(world, cars, random);
  const count = {
    worked: 0,
    breached: 0,
    alreadyUnder: 0,
    risk: 0,
    ifThin: 0,
    free: 0,
    freeWorked: 0,
    freePolish: 0,
  };
  for (const { car, plans } of planned) {
    const removedBy = drawPaint(world, random);
    for (const plan of plans) {
      const before = car.panels.get(plan.survey.panel.id)?.clearOnThinnest ?? Number.NaN;
      const isFree = before - CLEAR_FLOOR >= TRULY_FREE;
      if (isFree) count.free += 1;
      if (isFree && (plan.verdict === 'polish' || plan.verdict === 'lighter'))
        count.freeWorked += 1;
      if (isFree && plan.verdict === 'polish') count.freePolish += 1;
      if (plan.steps.length === 0) continue;
      count.worked += 1;
      count.risk += plan.risk ?? Number.NaN;
      count.ifThin += plan.riskIfThin ?? Number.NaN;
      if (before < CLEAR_FLOOR) count.alreadyUnder += 1;
      if (before - removedBy(plan) < CLEAR_FLOOR) count.breached += 1;
    }
  }
  const { risk, ifThin, ...counts } = count;
  return {
    ...counts,
    panels: planned.flatMap(({ plans }) => plans).length,
    statedRisk: risk / count.worked,
    statedIfThin: ifThin / count.worked,
  };
}
