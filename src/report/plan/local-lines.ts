/** Local work in words. */
import type { Remark } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { LocalWork } from '../../correction/plan/plan.ts';
import { joined, remarkFacts } from '../facts.ts';
import type { Facts } from '../model.ts';
import { stepsText } from './step-words.ts';

/** What comes of a deep defect and what is done there. */
export function localText(local: LocalWork, unit: LengthUnit): Facts {
  const { steps, removal, risk, place, reasons } = local;
  const outcome = reasons.slice(0, 1).map((one) => remarkFacts(one, unit));
  const { median, low, high } = removal;
  const aim = reasons.filter(isAim).map((one) => remarkFacts(one, unit));
  const done =
    steps.length === 0
      ? aim
      : [
          ...aim,
          `${stepsText(steps)} takes ${thicknessText(median, unit, 2)}\u00a0${unitName(unit)} (${thicknessText(low, unit)}–${thicknessText(high, unit)}) more${place === null ? '' : `, in all ${thicknessText(place.removal, unit, 2)} of ${thicknessText(place.budget, unit, 2)} that may go there`}`,
          ...reasons.filter(isOfPlace).map((one) => remarkFacts(one, unit)),
          ...(risk === null ? [] : [`risk there ${shown(100 * risk, 1)}\u00a0%`]),
        ];
  return joined([...outcome, ...done], '; ');
}

/** Why less may go there than on the panel stands beside the figure. */
const isOfPlace = ({ code }: Remark): boolean => code === 'local-less';

/** What it clears by the aim stands beside what it clears. */
const isAim = ({ code }: Remark): boolean => code === 'local-aim';

/** The same with why nothing milder is taken, and what keeps it from more. */
export function localWhyText(local: LocalWork, unit: LengthUnit): Facts {
  const further = local.reasons.slice(1).filter((one) => !isOfPlace(one) && !isAim(one));
  return joined([localText(local, unit), ...further.map((one) => remarkFacts(one, unit))], '; ');
}
