import { remark } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { says, um } from '../../base/sentence.ts';
import type { ZoneSurvey } from '../survey.ts';
import type { Finding } from './condition.ts';

/** Two zones, with the points of each, so that the edge between them can be found on the panel. */
export function mixedFinding(
  [thinner, thicker]: readonly [ZoneSurvey, ZoneSurvey],
  ashmanD: number | null,
): Finding {
  const [low, high] = [mean(thinner), mean(thicker)];
  const apart = high - low;
  const separation = ashmanD === null ? '' : `, Ashman’s D ${shown(ashmanD, 1)}`;
  const text = says`two zones ${um(apart)} apart${separation}: ${um(low)} at ${named(thinner)}, ${um(high)} at ${named(thicker)}`;
  return { condition: 'mixed', evidence: remark('mixed', text, apart) };
}

const mean = ({ statistics }: ZoneSurvey): number => statistics?.mean ?? Number.NaN;

const named = ({ points }: ZoneSurvey): string =>
  `${points.length === 1 ? 'point' : 'points'} ${points.map(({ point }) => point).join(', ')}`;
