/** Values that look keyed wrongly, points that show a 0 or are beyond the range, before anything that follows from them. */
import { says, tell, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { type AskedSlip, ifMeant, timesOf } from '../../film/condition/keying-slips.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { overRangeLine } from './range-lines.ts';
import { zeroTexts } from './zero-lines.ts';

/** `bonnet, point 3 (1190 µm, ten times its neighbours): if 119 µm was meant, it is original and 4.53 µm may go`. */
export function readAgainFirst(
  surveyed: readonly PanelSurvey[],
  { leftOut }: Pick<SurveyResult, 'leftOut'>,
  unit: LengthUnit,
): readonly Block[] {
  const told = [
    ...zeroTexts(surveyed, leftOut),
    ...overRangeLine(surveyed),
    ...slipTexts(surveyed, unit),
  ];
  return told.length === 0 ? [] : [paragraph(READ_AGAIN_FIRST, joined(told, ' · '))];
}

export const READ_AGAIN_FIRST = 'Read again first';

export const slipTexts = (surveyed: readonly PanelSurvey[], unit: LengthUnit): readonly string[] =>
  surveyed.flatMap(({ panel, keyingSlips }) =>
    keyingSlips.map((slip) => tell(says`${panel.name}, ${slipText(slip)}`, unit)),
  );

const slipText = (slip: AskedSlip) =>
  slip.ofPanel === undefined
    ? says`point ${slip.point} (${um(slip.thickness, null)}, ${timesOf(slip)} its neighbours): ${ifMeant(slip)}`
    : says`all ${slip.ofPanel} points (about ${um(slip.thickness, null)}, ${timesOf(slip)} the other panels): ${ifMeant(slip)}`;
