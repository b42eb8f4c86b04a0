/** Local work in words. */
import { textIn } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { unitName } from '../../base/sentence.ts';
import type { LocalWork } from '../../correction/plan/plan.ts';
import { type ShowUnit, thickness } from '../survey/film-table.ts';

/** What comes of a deep defect and what is done there. */
export function localText({ steps, removal, risk, reasons }: LocalWork, unit: ShowUnit): string {
  const [outcome] = reasons.map((one) => textIn(one, unit));
  const work = steps.map(({ combination, sets }) => `${sets}×\u00a0${combination.id}`).join(' + ');
  const { median, low, high } = removal;
  const done =
    steps.length === 0
      ? []
      : [
          `${work} there takes ${thickness(median, unit, 2)}\u00a0${unitName(unit)} (${thickness(low, unit)}–${thickness(high, unit)}) more`,
          ...(risk === null ? [] : [`risk at that place ${shown(100 * risk, 1)}\u00a0%`]),
        ];
  return [outcome ?? '', ...done].join('; ');
}

/** The same with what keeps it from more. */
export const localWhyText = (local: LocalWork, unit: ShowUnit): string =>
  [localText(local, unit), ...local.reasons.slice(1).map((one) => textIn(one, unit))].join('; ');
