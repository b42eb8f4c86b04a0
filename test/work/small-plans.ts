/** Plans of a few panels whose areas and times make round numbers. */
import { metres, micrometres, minutes, squareMetres } from '../../src/base/units.ts';
import type { PanelPlan, Plan, PlannedStep } from '../../src/correction/plan/plan.ts';
import { ladder } from '../../src/correction/removal/combination.ts';
import type { Panel } from '../../src/film/template/template.ts';
import { correctionModel } from '../../src/formats/models.ts';
import { fiveAround, panelOf, plainPanel, surveyOf } from '../film/car-builder.ts';

const rungs = ladder(correctionModel);

/** A step with a machine time given by hand, so that sums can be followed on paper. */
export function step(id: string, sets: number, machineTime: number): PlannedStep {
  const combination = rungs.find((one) => one.id === id);
  if (combination === undefined) throw new Error(`no ${id}`);
  return {
    combination,
    sets,
    removal: micrometres(combination.perSet * sets),
    machineTime: minutes(machineTime),
  };
}

/** One section is .3721 m²: an area of so many sections makes round numbers. */
export const SECTION = 0.3721;

const none = micrometres(0);
export const noRemoval = { median: none, mean: none, low: none, high: none };

export function panel(
  id: string,
  sections: number,
  steps: readonly PlannedStep[] = [],
  rest: Partial<Panel> = {},
): PanelPlan {
  const area = squareMetres(sections * SECTION);
  const survey = surveyOf({
    panels: [plainPanel(id, { area, trimLength: metres(2.5), ...rest })],
    readings: fiveAround(id, 112),
  });
  return {
    survey: panelOf(survey, id),
    verdict: steps.length === 0 ? 'leave' : 'polish',
    steps,
    removal: noRemoval,
    aimed: 0.85,
    expected: 0.85,
    risk: 0.01,
    riskIfThin: 0.02,
    already: 0,
    provisional: true,
    reasons: [],
    cautions: [],
    local: [],
    zones: [],
  };
}

export const plan = (...panels: readonly PanelPlan[]): Plan => ({
  panels,
  expectedPanelsBelowFloor: 0,
  panelsBelowFloorAlready: 0,
});

export const MEDIUM = 'da/foam-medium/medium';
export const FINE = 'da/foam-soft/fine';
