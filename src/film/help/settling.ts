/**
 * What would settle on which side of its line a panel lies: only what was reckoned to.
 *
 * What is measured again is held to read the same on average; the doubt that more points average away goes
 * down, the rest stays. It settles where the chance of the other side then is no more than `nearRisk`. That it was
 * painted again may be known without measuring. A clear that is read by itself says how much may go from a panel that
 * may be cut back, whichever it is; once it is read, that way is used up.
 */
import { remark } from '../../base/remark.ts';
import { coatOf } from '../coat-of.ts';
import type { PaintedTogether } from '../condition/line-comparison.ts';
import { isAlike } from '../condition/other-side.ts';
import type { PanelSurvey } from '../survey.ts';
import { panelNames } from '../template/side-names.ts';
import { chanceAfter, isOfOnePoint, SET_DOWN } from './measured-again.ts';
import type { SurveyAdvice } from './survey-advice.ts';

export type SettlingModel = { readonly mostPoints: number; readonly nearRisk: number };

/** Nothing where it is not near its line, or where as much may go on either side. */
export function settlingAdvice(
  {
    sureness,
    otherSide,
    points,
    facts,
  }: Pick<PanelSurvey, 'sureness' | 'otherSide' | 'points' | 'facts'>,
  { mostPoints, nearRisk }: SettlingModel,
): readonly SurveyAdvice[] {
  if (sureness === null || otherSide === null) return [];
  if (isAlike(otherSide)) return [];
  const { deciding } = sureness;
  if (deciding.shownBy !== undefined) return [remark('settle', paintedOverText(deciding.shownBy))];
  if (deciding.together !== undefined) return [remark('settle', sideText(deciding.together))];
  const { condition } = deciding;
  const again = isOfOnePoint(deciding)
    ? `that point read ${SET_DOWN} more times, if it reads the same`
    : `${mostPoints} points in all, if they read the same`;
  const settles = (checked: boolean): boolean => {
    const chance = chanceAfter(deciding, points, { count: mostPoints, checked });
    return chance !== null && chance <= nearRisk;
  };
  const ways = [
    ...(settles(false) ? [again] : settles(true) ? [`a checked gauge with ${again}`] : []),
    ...(condition === 'refinished'
      ? [
          'word that it was painted again (painted_days_ago in the job; word that it never was settles nothing)',
        ]
      : []),
  ];
  return ways.length === 0 && condition === 'cut-back' && facts.clear === null
    ? [
        remark(
          'settle-clear',
          `a ${coatOf(facts.finish)} read settles what may go, more points only narrow it`,
        ),
      ]
    : [remark('settle', settlingText(ways))];
}

/** Whether the usual film of the car is repaint no more points on this panel tell. */
const paintedOverText = (thinnest: string): string =>
  `the clear of ${thinnest} read, or word of what was painted again (painted_days_ago in the job): settles it`;

/** Nor whether a side was painted again. Shuts that were read left it open, and of one door they would. */
function sideText({ shutsWanted }: PaintedTogether): string {
  const shuts =
    shutsWanted.length === 0
      ? ''
      : `or the shuts of ${panelNames(shutsWanted).join(' and ')} read (place shut: apart as the faces are, it was not), `;
  return `word of what was painted again (painted_days_ago in the job), ${shuts}or a test spot of its own without colour: settles it`;
}

const settlingText = (ways: readonly string[]): string =>
  ways.length > 0
    ? `${ways.join('; or ')}: settles it`
    : 'neither more points nor a checked gauge would settle it';
