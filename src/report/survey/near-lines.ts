/** Panels near their line, a line or two each: the chance, what may go on either side, what settles it or helps most. */

import { groupBy } from '../../base/group-by.ts';
import { saying } from '../../base/remark.ts';
import { finePercent, LEAST_TOLD } from '../../base/rounding.ts';
import { joinSentences, nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { LineComparison } from '../../film/condition/line-comparison.ts';
import { isAlike } from '../../film/condition/other-side.ts';
import type { Help } from '../../film/help/what-would-help.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { SurveyHelp } from '../../tasks/survey/survey-help.ts';
import { toldFacts } from '../facts.ts';
import { type Block, paragraph } from '../model.ts';
import { partNames } from '../panel-list.ts';
import { coatName } from './coat-name.ts';
import { signed } from './help-lines.ts';
import { clearGains } from './own-gains.ts';
import { hangsOnAnother, heldBack, rangeIfWordHolds } from './sureness-lines.ts';

/** Of the panels and zones that are judged by themselves; nothing of those from which nothing may go on either side. */
export function nearLines(
  judged: readonly PanelSurvey[],
  helped: SurveyHelp,
  unit: LengthUnit,
): readonly Block[] {
  const near = judged.filter(isToldNear);
  const byWord = rangeIfWordHolds(near.filter(hangsOnAnother));
  const told = near.map((part) => ({
    part,
    said: toldFacts(lineOf(part, helped, hangsOnAnother(part) ? byWord : undefined), unit),
  }));
  return [...groupBy(told, ({ said }) => said.text).values()].map((group) =>
    paragraph(partNames(group.map(({ part }) => part)), group[0].said),
  );
}

/** Whether the page says of it what its word hangs on. */
export const isToldNear = ({ sureness, otherSide }: PanelSurvey): boolean =>
  sureness?.sure === 'near' &&
  otherSide !== null &&
  !(isAlike(otherSide) && (otherSide.budget ?? 0) < LEAST_TOLD);

function lineOf(part: PanelSurvey, helped: SurveyHelp, byWord?: Sentence): Sentence {
  const { sureness } = part;
  const chance = sureness === null ? [] : [chanceText(sureness.deciding)];
  return joinSentences([...chance, sidesText(part, byWord), ...waysOut(part, helped)], nextFact);
}

/** `11 % likely cut-back`. */
function chanceText(line: LineComparison): Sentence {
  const { otherSide, isBeyond, condition, shownBy, together, figure } = line;
  if (together !== undefined) {
    return says`${finePercent(otherSide)} likely ${condition} together: one side ${um(figure)} over the other`;
  }
  const shows = shownBy === undefined ? '' : `: if ${shownBy} shows the factory’s film`;
  return says`${finePercent(otherSide)} likely ${isBeyond ? 'not ' : ''}${condition}${shows}`;
}

/** What may go over both stands in the table and under Settle first. */
function sidesText(part: PanelSurvey, byWord: Sentence = rangeIfWordHolds([part])): Sentence {
  const { otherSide, condition: word } = part;
  if (otherSide === null) return says``;
  const { condition, budget: there } = otherSide;
  if (there === null) return says`if ${condition}, each part would have limits of its own`;
  return isAlike(otherSide)
    ? says`${word} or ${condition}, the same may go${heldBack(part)}`
    : says`${byWord} may go if ${word}, ${um(there, 2)} if ${condition}`;
}

/** What settles it. */
function waysOut(part: PanelSurvey, helped: SurveyHelp): readonly Sentence[] {
  const help = helped.get(part) ?? [];
  const clear = help.find(({ code }) => code === 'clear');
  if (clear === undefined || !isSettledByClear(part)) {
    return part.advice
      .filter(({ code, text }) => code === 'settle' && SETTLES.test(text))
      .map(saying);
  }
  const isAlone = !help.some((one) => one !== clear && one.gain >= LEAST_TOLD);
  const read = says`${coatName([part])} read settles it: ${clearText(clear, part)}`;
  return [isAlone ? says`${read}; without it leave it alone` : read];
}

/** Whether nothing but a clear that is read settles it: what that frees stands beside it. */
export const isSettledByClear = ({ advice }: PanelSurvey): boolean =>
  advice.some(({ code }) => code === 'settle-clear');

/** `+2.07 µm as original`; that all is lost on the other side was said where nothing may go there. */
function clearText(clear: Help, part: PanelSurvey): Sentence {
  const [more, less] = clearGains(clear, part);
  if (less === undefined) return signed(more.gain);
  const isSaid =
    part.otherSide?.budget === 0 && less.word === part.otherSide.condition && less.gain <= 0;
  const or = isSaid ? says`` : says`, ${signed(less.gain)} as ${less.word}`;
  return says`${signed(more.gain)} as ${more.word}${or}`;
}

/** Not what would not. */
const SETTLES = /: settles it$/u;
