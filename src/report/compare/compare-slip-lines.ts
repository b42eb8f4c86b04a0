/** Values that look keyed wrongly, before anything that the comparison says. */
import { shownFile } from '../../base/file-name.ts';
import { says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { CompareResult } from '../../tasks/compare/compare-files.ts';
import type { VisitSlip } from '../../tasks/compare/compare-slips.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';

/** `roof, point 2 in after.csv (1164 µm, ten times its neighbours)` */
export function slipLines(
  { slips }: Pick<CompareResult, 'slips'>,
  unit: LengthUnit,
): readonly Block[] {
  if (slips.length === 0) return [];
  const told = slips.map((one) => slipText(one, unit));
  const them = new Set(slips.map(({ panel }) => panel.id)).size === 1 ? 'that panel' : 'these';
  return [
    notice(
      'Read again first',
      joined(
        [`${told.join('; ')}.`, `Until then nothing is told of ${them}: do not work on there.`],
        ' ',
      ),
    ),
  ];
}

const slipText = ({ file, panel, slip }: VisitSlip, unit: LengthUnit): string =>
  tell(
    says`${panel.name}, point ${slip.point} in ${shownFile(file)} (${um(slip.thickness, null)}, ${slip.factor === 10 ? 'ten times' : 'a tenth of'} its neighbours)`,
    unit,
  );
