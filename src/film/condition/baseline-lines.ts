/** The two lines that are drawn from the usual film of the car: over it film reads like repaint, under it it is cut back. */
import { add, exactly, multiply, type Uncertain } from '../../base/uncertainty.ts';
import { micrometres } from '../../base/units.ts';
import type { FilmModel } from '../film-model.ts';
import { medianUncertainty } from './compared-figures.ts';
import { repaintReach } from './condition.ts';
import type { BesideFiller, HeldBeside, JudgedAgainst, JudgedPanel } from './judged-panel.ts';
import { chanceBeyond, compareWithLine, type LineComparison } from './line-comparison.ts';

/**
 * Held to one line: that of the baseline, unless the one for any car lies lower. Besides to that of the factory's film
 * if the usual film of the car is repaint, where it carries that.
 */
export function repaintLines(
  { points, median, uncertainty }: BesideFiller,
  gone: Uncertain<'µm'>,
  against: JudgedAgainst,
  { conditions }: FilmModel,
): readonly LineComparison[] {
  const { baseline, beside = null, ifPaintedOver } = against;
  const held = {
    compared: 'median',
    condition: 'refinished',
    side: 'over',
    figure: add(medianUncertainty(median, points.length, uncertainty), gone),
    putBack: gone.value,
  } as const;
  const by = (film: Uncertain<'µm'> | null): LineComparison =>
    compareWithLine({ ...held, ...lowerRepaintLine(film, conditions) });
  const own = likelier(by(baseline), beside, by);
  if (own.isBeyond) return [own];
  const withSide = sideLines(against, conditions);
  if (ifPaintedOver === null || isUnderOthers(held.figure, baseline, conditions)) {
    return [own, ...withSide];
  }
  const { film, chance, shownBy } = ifPaintedOver;
  const then = compareWithLine({
    ...held,
    line: repaintLine(film, conditions),
    baseline: film.value,
  });
  // Of all that carry the usual film as likely, or the less one read the more it might give.
  const over = { ...then, isBeyond: false, otherSide: chance, shownBy: shownBy.panel.name };
  return [own, over, ...withSide];
}

/**
 * That its side was painted again: nobody knows whether it was. Not where all that carry the usual film may have been,
 * its side with them.
 */
const sideLines = (
  { together, ifPaintedOver }: JudgedAgainst,
  { nearRisk, paintedOverMost }: FilmModel['conditions'],
): readonly LineComparison[] =>
  together === undefined || (ifPaintedOver?.chance ?? 0) > nearRisk
    ? []
    : [{ ...together.apart, isBeyond: false, otherSide: paintedOverMost, together }];

/** That of the film, unless the one for any car lies lower. */
function lowerRepaintLine(
  film: Uncertain<'µm'> | null,
  conditions: FilmModel['conditions'],
): Pick<LineComparison, 'baseline'> & { readonly line: Uncertain<'µm'> } {
  const ofAnyCar = { line: exactly(conditions.refinished), baseline: null };
  if (film === null) return ofAnyCar;
  const line = repaintLine(film, conditions);
  return line.value < ofAnyCar.line.value ? { line, baseline: film.value } : ofAnyCar;
}

/** Of what gives a panel its word, and what it is held to besides, the one by which it is likelier beyond its line. */
function likelier(
  own: LineComparison,
  beside: Pick<HeldBeside, 'film' | 'chance'> | null,
  by: (film: Uncertain<'µm'>) => LineComparison,
): LineComparison {
  if (beside === null || own.isBeyond || beside.chance <= own.otherSide) return own;
  const other = by(beside.film);
  const otherSide = beside.chance * chanceBeyond(other);
  if (otherSide <= own.otherSide) return own;
  const word = { ...other, isBeyond: false, otherSide };
  return beside.chance < 1 ? { ...word, ifHeld: beside.chance } : word;
}

/** Film that lies under the line of film cut back is not the usual film of the car. */
const isUnderOthers = (
  figure: Uncertain<'µm'>,
  baseline: Uncertain<'µm'> | null,
  { cutBack }: FilmModel['conditions'],
): boolean => baseline !== null && figure.value < baseline.value - cutBack;

/** Over the baseline by a fixed step or by a share of it, whichever is more. */
function repaintLine(baseline: Uncertain<'µm'>, model: FilmModel['conditions']): Uncertain<'µm'> {
  const reach = micrometres(repaintReach(baseline.value, model));
  return reach > model.refinishedAbove
    ? multiply(baseline, 1 + model.refinishedAboveShare)
    : add(baseline, exactly(reach));
}

/** A panel that reads far less was not cut back where the usual film of the car is repaint and this shows the factory's. */
export function cutBackLines(
  { uncertainty, gone }: JudgedPanel,
  { baseline, beside = null, ifPaintedOver }: JudgedAgainst,
  { conditions }: FilmModel,
): readonly LineComparison[] {
  if (baseline === null) return [];
  const by = (film: Uncertain<'µm'>): LineComparison =>
    compareWithLine({
      compared: 'mean',
      condition: 'cut-back',
      side: 'under',
      figure: add(uncertainty, gone),
      putBack: gone.value,
      line: add(film, exactly(micrometres(-conditions.cutBack))),
      baseline: film.value,
    });
  const lacking = beside === null ? null : { ...beside, film: beside.overZinc ?? beside.film };
  const own = likelier(by(baseline), lacking, by);
  if (ifPaintedOver === null || !own.isBeyond) return [own];
  const { chance, shownBy } = ifPaintedOver;
  // What is out of the question for the others is for this one.
  if (chance <= Math.max(conditions.nearRisk, own.otherSide)) return [own];
  return [{ ...own, otherSide: chance, shownBy: shownBy.panel.name }];
}
