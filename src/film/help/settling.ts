/**
 * What would settle on which side of its line a panel lies: only what was reckoned to.
 *
 * What is measured again is held to read the same on average; the doubt that more points average away goes
 * down, the rest stays. It settles where the chance of the other side then is no more than `nearRisk`. A history
 * settles what somebody did to the panel, where nobody stated it yet. Where nothing does, a clear that is read by
 * itself still says how much may go.
 */
import { remark } from '../../base/remark.ts';
import { type Component, type Uncertain, uncertain } from '../../base/uncertainty.ts';
import type { Condition } from '../condition/condition.ts';
import { chanceWith, type LineComparison } from '../condition/line-comparison.ts';
import type { PanelFacts } from '../film-model.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { PanelSurvey } from '../survey.ts';
import type { SurveyAdvice } from './survey-advice.ts';

export type SettlingModel = { readonly mostPoints: number; readonly nearRisk: number };

/** Nothing where it is not near its line, or where as much may go on either side. */
export function settlingAdvice(
  { sureness, otherSide, points, facts, budget }: Omit<PanelSurvey, 'advice'>,
  { mostPoints, nearRisk }: SettlingModel,
): readonly SurveyAdvice[] {
  if (sureness === null || otherSide === null || otherSide.budget === budget) return [];
  const { deciding } = sureness;
  const settles = (one: Measured): boolean => chanceWith(one.difference) <= nearRisk;
  const measured = measuredAgain(deciding, points, mostPoints).find(settles);
  const ways = [
    ...(measured === undefined ? [] : [measured.words]),
    ...(isToldByHistory(deciding.condition, facts) ? ['its history'] : []),
  ];
  const text =
    ways.length === 0
      ? 'a clear read settles what may go, points would not'
      : `${ways.join(' or ')} would settle it`;
  return [remark('settle', text)];
}

type Measured = { readonly words: string; readonly difference: Uncertain<'µm'> };

/** From the least work to the most. */
function measuredAgain(
  { compared, difference }: LineComparison,
  points: readonly PanelPoint[],
  mostPoints: number,
): readonly Measured[] {
  const count = points.length;
  const readings = Math.max(...points.map(({ repeats }) => repeats.length));
  const ofOnePoint = compared === 'largest-point' || compared === 'smallest-point';
  const words = ofOnePoint ? `that point read ${SET_DOWN} more times` : `${mostPoints} points`;
  // The gap between two points is no mean: points added elsewhere leave it what it is.
  if (compared === 'halves-gap' || (!ofOnePoint && count >= mostPoints)) return [];
  const factor = ofOnePoint ? 1 + SET_DOWN / readings : mostPoints / count;
  const more = ofOnePoint ? 0 : mostPoints - count;
  const averaged = scaled(difference, (source, { contribution, dof }) =>
    AVERAGED.includes(source)
      ? { contribution: contribution / Math.sqrt(factor), dof: dof + more }
      : null,
  );
  const checked = scaled(averaged, (source, { dof }) =>
    source === 'calibration' ? { contribution: 0, dof } : null,
  );
  return [
    { words, difference: averaged },
    { words: `a checked gauge and ${words}`, difference: checked },
  ];
}

/** Readings more at a point that decides. */
const SET_DOWN = 3;

/** Doubts that go down with the square root of points or readings. */
const AVERAGED: readonly string[] = ['film', 'repeatability', 'resolution', 'curvature', 'spread'];

function scaled(
  { value, components }: Uncertain<'µm'>,
  changed: (source: string, component: Component) => Component | null,
): Uncertain<'µm'> {
  const sources = [...components].map(([source, one]) => [source, changed(source, one) ?? one]);
  return uncertain(value, Object.fromEntries(sources));
}

/** Whoever knows what was done to a panel knows of these; what was polished off may be stated already. */
function isToldByHistory(condition: Condition, { taken }: PanelFacts): boolean {
  if (condition === 'cut-back') return taken === null;
  return condition === 'refinished' || condition === 'filler' || condition === 'mixed';
}
