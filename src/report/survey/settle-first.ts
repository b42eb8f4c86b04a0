/** Panels near a line of which more may go on one side: what they may be, and what may go till that is known. */

import { groupBy } from '../../base/group-by.ts';
import { LEAST_TOLD } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import { HELD_BACK, isAlike, wordThatTakes } from '../../film/condition/other-side.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import { joined } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { partNames } from '../panel-list.ts';

/** Near a line, and more might go on one side of it; near that of thin film, which takes nothing, it may be worked. */
export function isOpen({ otherSide, budget, boundBy }: PanelSurvey): boolean {
  if (otherSide === null) return false;
  const { budget: there, ifWordHolds: here } = otherSide;
  if (there === null) return true;
  const isHeldBack = Math.max(there, here) - budget >= HELD_BACK;
  return isHeldBack && (!isAlike(otherSide) || boundBy.code === 'near-line');
}

/** `front left door (original or cut-back): else no more than 3.05 µm`; those of which the same is said together. */
export function settleFirst(open: readonly PanelSurvey[], unit: LengthUnit): readonly Block[] {
  const told = groupBy(open, (part) => `(${wordsOf(part)}): ${allowedTillThen(part, unit)}`);
  const texts = [...told].map(([said, group]) => `${partNames(group)} ${said}`);
  return texts.length === 0 ? [] : [paragraph('Settle first', joined(texts, ' · '))];
}

const wordsOf = (part: PanelSurvey): string =>
  [part.condition, wordThatTakes(part) ?? []].flat().join(' or ');

const allowedTillThen = ({ budget }: PanelSurvey, unit: LengthUnit): string =>
  budget < LEAST_TOLD
    ? 'nothing may go till then'
    : `else no more than ${thicknessText(budget, unit, 2)} ${unitName(unit)}`;
