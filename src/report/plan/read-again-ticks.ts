/** Values that look keyed wrongly, with a place to write the new reading: whoever stands at the car can settle them. */
import type { LengthUnit } from '../../base/units.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Block } from '../model.ts';
import { READ_AGAIN_FIRST, slipTexts } from '../survey/slip-lines.ts';
import { BLANK } from './spot-first.ts';

export function readAgainTicks(
  surveyed: readonly PanelSurvey[],
  unit: LengthUnit,
): readonly Block[] {
  const texts = slipTexts(surveyed, unit);
  if (texts.length === 0) return [];
  return [
    {
      kind: 'ticks',
      label: READ_AGAIN_FIRST,
      note: 'keyed wrongly? If it was, put it right and have the plan made anew',
      items: texts.map((text) => ({ text: `${text}; reads ${BLANK}`, boxes: 1 })),
    },
  ];
}
