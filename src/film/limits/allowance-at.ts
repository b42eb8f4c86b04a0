/** What may come off a panel as a removal is foretold better or worse than the survey took it. */
import { spoken } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import type { OtherSide } from '../condition/condition-sureness.ts';
import { onTheOtherSide } from '../condition/other-side.ts';
import { overBothSides, worksToLess } from '../condition/over-both-sides.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Allowance, allowance, bounded } from './allowance.ts';
import type { Limit, PanelFilm, RemovalTerms, TopcoatCase } from './removal-limits.ts';

export type AllowanceGrounds = {
  readonly terms: RemovalTerms;
  readonly model: FilmModel;
};

/** Nearer than this, two ln-SDs differ by the rounding of their sums: the survey's own limits stand. */
const SAME_LOG_SD = 1e-9;

/**
 * The panel's limits at another ln-SD of the removal; its own survey's where it was not read. A panel near its line is
 * held to the risk over both sides of it: work is done once, whatever the panel turns out to be.
 */
export function allowanceAt(
  panel: PanelSurvey,
  logSd: number,
  { terms, model }: AllowanceGrounds,
  lookedAt?: (topcoat: TopcoatCase) => TopcoatCase,
): Allowance {
  const { film, facts, condition, also, baseline } = panel;
  if (film === null) return panel;
  const isOwn = Math.abs(logSd - terms.logSd) < SAME_LOG_SD && lookedAt === undefined;
  const conditions = [condition, ...also];
  const asJudged = isOwn
    ? panel
    : allowance(
        { film, facts, points: film.count, conditions, baseline },
        { ...terms, logSd },
        model,
        lookedAt,
      );
  return onBothSides(panel, asJudged, film, { terms: { ...terms, logSd }, model }, lookedAt);
}

/** The same, held to what may go on either side of the line that the panel is near. */
function onBothSides(
  panel: PanelSurvey,
  here: Allowance,
  film: PanelFilm,
  { terms, model }: AllowanceGrounds,
  lookedAt?: (topcoat: TopcoatCase) => TopcoatCase,
): Allowance {
  const { sureness, otherSide } = panel;
  if (sureness === null || otherSide === null || otherSide.overBoth === null) return here;
  const { deciding } = sureness;
  const there = allowance(onTheOtherSide(panel, deciding, film), terms, model, lookedAt);
  if (there.budget >= here.budget) return here;
  const both = overBothSides(here, there, deciding.otherSide, terms);
  return worksToLess(here.budget, both)
    ? { ...here, ...bounded([...here.limits, nearLineLimit(both.workTo, otherSide)]) }
    : here;
}

const nearLineLimit = (value: Micrometres, { condition }: OtherSide): Limit => ({
  code: 'near-line',
  ...spoken(
    says`near its line: no more than ${um(value, 2)} till it is settled if it is ${condition}`,
  ),
  value,
});

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
    says`repaint with a test spot of its own: no more than ${um(value)}, the least of the original panels`,
  ),
  value,
});
