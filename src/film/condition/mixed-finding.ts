import { remark } from '../../base/remark.ts';
import { shown } from '../../base/rounding.ts';
import { says, um } from '../../base/sentence.ts';
import { mean } from '../../base/stats/summary.ts';
import { thicknesses } from '../gathered-panel.ts';
import type { ZoneSurvey } from '../survey.ts';
import type { Finding } from './condition.ts';

/** Two zones, with the points of each, so that the edge between them can be found on the panel. */
export function mixedFinding(
  [thinner, thicker]: readonly [ZoneSurvey, ZoneSurvey],
  ashmanD: number | null,
): Finding {
  const [low, high] = [filmOf(thinner), filmOf(thicker)];
  const apart = high - low;
  const separation = ashmanD === null ? '' : `, Ashman’s D ${shown(ashmanD, 1)}`;
  const text = says`two zones ${um(apart)} apart${separation}: ${um(low)} at ${named(thinner)}, ${um(high)} at ${named(thicker)}`;
  return { condition: 'mixed', evidence: remark('mixed', text, apart) };
}

const filmOf = ({ points }: ZoneSurvey): number => mean(thicknesses(points));

/** A zone has two points at least. */
const named = ({ points }: ZoneSurvey): string =>
  `points ${points.map(({ point }) => point).join(', ')}`;
