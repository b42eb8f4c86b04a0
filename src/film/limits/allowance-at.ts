/** What may come off a panel as a removal is foretold better or worse than the survey took it. */
import { spoken } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Allowance, allowance, bounded } from './allowance.ts';
import type { Limit, RemovalTerms, TopcoatCase } from './removal-limits.ts';

export type AllowanceGrounds = {
  readonly terms: RemovalTerms;
  readonly baseline: Micrometres | null;
  readonly model: FilmModel;
};

/** Nearer than this, two ln-SDs differ by the rounding of their sums: the survey's own limits stand. */
const SAME_LOG_SD = 1e-9;

/** The panel's limits at another ln-SD of the removal; its own survey's where it was not read. */
export function allowanceAt(
  panel: PanelSurvey,
  logSd: number,
  { terms, baseline, model }: AllowanceGrounds,
  lookedAt?: (topcoat: TopcoatCase) => TopcoatCase,
): Allowance {
  const { film, facts, condition, also } = panel;
  const isOwn = Math.abs(logSd - terms.logSd) < SAME_LOG_SD && lookedAt === undefined;
  if (film === null || isOwn) return panel;
  const conditions = [condition, ...also];
  return allowance(
    { film, facts, points: film.count, conditions, baseline },
    { ...terms, logSd },
    model,
    lookedAt,
  );
}

/** A panel left alone for its finish or its age says nothing of what sound film allows. */
export const isSound = ({ condition, points, boundBy }: PanelSurvey): boolean =>
  condition === 'original' &&
  points.length > 1 &&
  boundBy.code !== 'finish' &&
  boundBy.code !== 'fresh-paint';

/**
 * Repaint on which a test spot was made: no more than the least of the car's sound panels; nothing where
 * none is sound, or where another reason forbids it.
 */
export function allowanceAfterSpot(
  panel: PanelSurvey,
  all: readonly PanelSurvey[],
  logSd: number,
  grounds: AllowanceGrounds,
): Allowance {
  const found = allowanceAt(panel, logSd, grounds);
  const sound = all.filter(isSound);
  if (sound.length === 0 || !found.limits.some(({ code }) => code === 'test-spot')) return found;
  const cap = micrometres(Math.min(...sound.map((one) => allowanceAt(one, logSd, grounds).budget)));
  const others = found.limits.filter(({ code }) => code !== 'test-spot');
  return { topcoat: found.topcoat, ...bounded([...others, capLimit(cap)]) };
}

const capLimit = (value: Micrometres): Limit => ({
  code: 'sound-panels',
  ...spoken(
    says`repaint with a test spot of its own: no more than ${um(value)}, the least of the sound panels`,
  ),
  value,
});
