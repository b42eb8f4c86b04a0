/** What to mind of spots at deep defects: their sets come on one place, with less time between the passes than a section has. */
import { type Remark, remark } from '../../base/remark.ts';
import { heatCautions } from '../heat/heat-cautions.ts';
import type { CorrectionModel } from '../removal/catalogue.ts';
import type { LocalWork, PanelPlan } from './plan.ts';
import { rotaryCautions } from './plan-remarks.ts';

/** What the panel's own steps do not say already. */
export function localCautions(
  { survey, cautions }: Pick<PanelPlan, 'survey' | 'cautions'>,
  local: readonly Pick<LocalWork, 'steps'>[],
  { removal, heat, correction }: CorrectionModel,
): readonly Remark[] {
  const steps = local.flatMap((spot) => spot.steps);
  const onSpot = { heat, removal: { ...removal, section: correction.localSection } };
  const isSaid = ({ code, value = 0 }: Remark): boolean =>
    cautions.some((one) => one.code === code && (one.value ?? 0) >= value);
  return [
    ...heatCautions(survey.panel.substrate, steps, onSpot).map(({ code, text, value }) =>
      remark(code, `at the spot: ${text}`, value),
    ),
    ...rotaryCautions(steps, heat),
  ].filter((one) => !isSaid(one));
}
