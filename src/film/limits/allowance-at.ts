/** What may come off a panel as a removal is foretold better or worse than the survey took it. */
import { spoken } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import {
  isHeldByOwnLine,
  isHeldWithSide,
  sidePaintedWith,
  unlessRepaint,
  unlessWithSide,
} from '../condition/painted-side.ts';
import type { FilmModel } from '../film-model.ts';
import type { PanelSurvey } from '../survey.ts';
import { type Allowance, allowance, bounded } from './allowance.ts';
import { allowanceCase, type LookedAt } from './allowance-case.ts';
import type { Limit } from './limit.ts';
import type { RemovalTerms } from './removal-limits.ts';
import { soundCap } from './sound-cap.ts';

export type AllowanceGrounds = {
  readonly terms: RemovalTerms;
  readonly model: FilmModel;
};

/** Nearer than this, two ln-SDs differ by the rounding of their sums: the survey's own limits stand. */
const SAME_LOG_SD = 1e-9;

/**
 * The panel's limits at another ln-SD of the removal; its own survey's where it was not read. Over all that it may be:
 * work is done once, whatever the panel turns out to be.
 */
export function allowanceAt(
  panel: PanelSurvey,
  logSd: number,
  { terms, model }: AllowanceGrounds,
  lookedAt?: LookedAt,
): Allowance {
  const isOwn = Math.abs(logSd - terms.logSd) < SAME_LOG_SD && lookedAt === undefined;
  return isOwn ? panel : allowanceAgain(panel, { terms: { ...terms, logSd }, model }, lookedAt);
}

/** The same told anew from its film and facts, such as of a panel from which more has come off since. */
export function allowanceAgain(
  panel: PanelSurvey,
  { terms, model }: AllowanceGrounds,
  lookedAt?: LookedAt,
): Allowance {
  const asked = allowanceCase(panel);
  return asked === null ? panel : allowance(asked, terms, model, lookedAt);
}

/**
 * Repaint on which a test spot was made, or a panel that may be repaint, by its side or by its own film: no more than
 * the least of the car's sound panels, what is on record to be gone (the spot among it) counted in; however well the
 * removal is foretold, no more than the survey says of those panels. Nothing where none is sound, or where another reason
 * forbids it. Original or repaint, as much may go then: so what it is need not be settled.
 */
export function allowanceAfterSpot(
  panel: PanelSurvey,
  all: readonly PanelSurvey[],
  logSd: number,
  grounds: AllowanceGrounds,
): Allowance {
  const atLogSd = { ...grounds, terms: { ...grounds.terms, logSd } };
  const byLine = isHeldByOwnLine(panel);
  const isInDoubt = byLine || sidePaintedWith(panel) !== undefined;
  const found = isInDoubt
    ? allowanceAgain(unlessRepaint(panel), atLogSd)
    : allowanceAt(panel, logSd, grounds);
  const { risk } = grounds.terms;
  // In doubt as it is they show no original paint, but let no more go than they would as that.
  const [alike, measures] = byLine
    ? [all.filter(isHeldByOwnLine), all.filter((one) => !isHeldByOwnLine(one))]
    : [[], all];
  const asSurveyed = carCap(measures, grounds);
  const asForetold = soundCap(measures, risk, (one) =>
    isHeldWithSide(one) ? byItself(one, atLogSd) : allowanceAt(one, logSd, grounds),
  );
  const isFreed = isInDoubt || found.limits.some(({ code }) => code === 'test-spot');
  if (asSurveyed === null || asForetold === null || !isFreed) return isInDoubt ? panel : found;
  const cap = micrometres(
    Math.min(
      asSurveyed.budget,
      asForetold.budget,
      ...alike.map((one) => allowanceAgain(unlessRepaint(one), grounds).budget),
    ),
  );
  const others = found.limits.filter(({ code }) => code !== 'test-spot');
  const gone = panel.facts.recorded?.mean ?? micrometres(0);
  return { topcoat: found.topcoat, ...bounded([...others, capLimit(cap, gone)]) };
}

/** What the panels of the car hold its repaint to, as the survey has it. */
export const carCap = (
  panels: readonly PanelSurvey[],
  grounds: AllowanceGrounds,
): PanelSurvey | null =>
  soundCap(panels, grounds.terms.risk, (one) =>
    isHeldWithSide(one) ? byItself(one, grounds) : one,
  );

const byItself = (panel: PanelSurvey, grounds: AllowanceGrounds): Allowance =>
  allowanceAgain(unlessWithSide(panel), grounds);

function capLimit(cap: Micrometres, gone: Micrometres): Limit {
  const counted = gone > 0 ? says`, ${um(gone, 2)} of it gone already` : '';
  return {
    code: 'sound-panels',
    ...spoken(
      says`repaint with a test spot of its own: no more than ${um(cap, 2)}, the least that may go from any original panel of this car${counted}`,
    ),
    value: micrometres(Math.max(0, cap - gone)),
    ofRepaint: { cap, gone },
  };
}
