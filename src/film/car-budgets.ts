/** What may go from a panel or zone of a car: the budget of its survey, and nothing else of that. */
import { at } from '../base/at.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import { type CarContext, leastByFinish } from './car-context.ts';
import type { GatheredCar } from './gathered-car.ts';
import { type GatheredPanel, isRead } from './gathered-panel.ts';
import { judgePart } from './judge-part.ts';
import { budgetOf } from './limits/allowance.ts';
import { isZone, type PanelSurvey, type ZoneName } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';
import { zonePart } from './zone-part.ts';

type Grounds = Pick<SurveyRequest, 'model' | 'terms'>;

/** Of a zone that is none any more, what its panel allows; of a panel in two zones, what the lesser of them does. */
export function budgetIn(
  { panels, context }: GatheredCar,
  part: PanelSurvey,
  grounds: Grounds,
): Micrometres {
  const place = panels.findIndex(({ panel }) => panel.id === part.panel.id);
  const panel = at(panels, place);
  return leastByFinish(
    panel,
    context,
    (one) => budgetBy(panel, one, part, grounds),
    (budget) => budget,
  );
}

function budgetBy(
  panel: GatheredPanel,
  context: CarContext,
  part: PanelSurvey,
  grounds: Grounds,
): Micrometres {
  const zones = context.zones.get(part.panel.id);
  if (zones === undefined) return partBudget(panel, context, grounds);
  const ofZone = (zone: ZoneName): Micrometres =>
    partBudget(zonePart(panel, zones, zone, context.baseline), context, grounds);
  return isZone(part)
    ? ofZone(part.zone)
    : micrometres(Math.min(ofZone('thinner'), ofZone('thicker')));
}

function partBudget(
  gathered: GatheredPanel,
  context: CarContext,
  { terms, model }: Grounds,
): Micrometres {
  // Nothing may go from what nobody read.
  if (!isRead(gathered)) return micrometres(0);
  const { film, facts, known, baseline, sides } = judgePart(gathered, context, { terms, model });
  const conditions = known.map(({ condition }) => condition);
  return budgetOf({ film, facts, conditions, baseline, sides }, terms, model);
}
