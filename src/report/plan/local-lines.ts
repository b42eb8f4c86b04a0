/** Local work in words. */
import { textIn } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { LocalWork } from '../../correction/plan/plan.ts';
import { stepsText } from './step-words.ts';

/** What comes of a deep defect and what is done there. */
export function localText(local: LocalWork, unit: LengthUnit): string {
  const { steps, removal, risk, place, reasons } = local;
  const [outcome] = reasons.map((one) => textIn(one, unit));
  const { median, low, high } = removal;
  const done =
    steps.length === 0
      ? []
      : [
          `${stepsText(steps)} there takes ${thicknessText(median, unit, 2)}\u00a0${unitName(unit)} (${thicknessText(low, unit)}–${thicknessText(high, unit)}) more${place === null ? '' : `, in all ${thicknessText(place.removal, unit, 2)} of ${thicknessText(place.budget, unit, 2)} that may go at one place`}`,
          ...(risk === null ? [] : [`risk at that place ${shown(100 * risk, 1)}\u00a0%`]),
        ];
  return [outcome ?? '', ...done].join('; ');
}

/** The same with what keeps it from more. */
export const localWhyText = (local: LocalWork, unit: LengthUnit): string =>
  [localText(local, unit), ...local.reasons.slice(1).map((one) => textIn(one, unit))].join('; ');
