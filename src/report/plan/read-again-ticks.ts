/** Values that look keyed wrongly, points that show a 0 or are beyond the range, with a place to write the new reading: whoever stands at the car can settle them. */
import type { LengthUnit } from '../../base/units.ts';
import type { PanelPlan } from '../../correction/plan/plan.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import { asksToReadAgain } from '../../tasks/survey/read-again.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import type { Block } from '../model.ts';
import { overRangeTexts } from '../survey/range-lines.ts';
import { READ_AGAIN_FIRST, slipTexts } from '../survey/slip-lines.ts';
import { zeroTexts } from '../survey/zero-lines.ts';
import { BLANK } from './spot-first.ts';

export const readAgainTicks = (
  surveyed: readonly PanelSurvey[],
  { leftOut }: Pick<SurveyResult, 'leftOut'>,
  unit: LengthUnit,
): readonly Block[] => [
  ...ticks(
    zeroTexts(surveyed, leftOut),
    'bare metal? Leave the panel alone. Else add the reading and have the plan made anew',
  ),
  ...ticks(
    overRangeTexts(surveyed),
    'beyond the gauge’s range: filler, or the probe was lifted. The same again? Leave the panel till a test spot. Else add the reading and have the plan made anew',
  ),
  ...ticks(
    slipTexts(surveyed, unit),
    'keyed wrongly? If it was, put it right and have the plan made anew',
  ),
];

/** Whether its panel stands there: nothing of it is worked before. */
export const isToReadAgain = (
  { survey: { panel } }: PanelPlan,
  { plan, leftOut }: Pick<PlanResult, 'plan' | 'leftOut'>,
): boolean =>
  plan.panels.some(
    ({ survey }) => survey.panel.id === panel.id && asksToReadAgain(survey, leftOut),
  );

const ticks = (texts: readonly string[], note: string): readonly Block[] =>
  texts.length === 0
    ? []
    : [
        {
          kind: 'ticks',
          label: READ_AGAIN_FIRST,
          note,
          items: texts.map((text) => ({ text: `${text}; reads ${BLANK}`, boxes: 1 })),
        },
      ];
