/**
 * Whether all panels lost about the same amount more than was to go, or less. A gauge that was set or zeroed otherwise
 * at one of the visits shows just that, and paint seldom does. Nothing is freed by it: it is told, and how it is settled.
 *
 * Asked where at least half of the parts surely lost more than might go, or by a plan more than it foretold, and all of
 * them some more; of less, which hides a loss, where all lost some less than a plan foretold and no factor on it shows as
 * much: on hard paint one does. The excess over the plan, else what came off as it stands, is one amount on all unless
 * Q = Σ (dᵢ − d̄)²/uᵢ², d̄ weighted by 1/uᵢ², is beyond what chance makes of one amount in 1 case of 100 (χ², n − 1).
 * uᵢ is what the panel's own readings scatter by and, of what was foretold, what steps differ by from panel to panel.
 */

import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { shownFile } from '../../base/file-name.ts';
import { bare, type Sentence, says, tell, um } from '../../base/sentence.ts';
import { chiSquareQuantile } from '../../base/stats/chi-square.ts';
import { normalQuantile } from '../../base/stats/normal.ts';
import { sum } from '../../base/sum.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { scatterOfChange } from '../../film/compare/compare-change.ts';
import { isOver } from './compare-overrun.ts';
import type { PartLeft } from './part-left.ts';

export type CommonShift = {
  /** How much more than was to go, below 0 how much less, or how much in all; `within` holds it in 95 cases of 100. */
  readonly by: Micrometres;
  readonly within: Micrometres;
  readonly over: 'plan' | 'nothing';
  readonly parts: number;
  /** Parts that the plan leaves alone. */
  readonly leftAlone: number;
  /** Whether steps that all cut more by one factor would show as much: then both may be. */
  readonly asByRate: boolean;
};

/** No rate explains it. */
export const isOfGauge = (shift: CommonShift | null): boolean => shift !== null && !shift.asByRate;

const LEAST_PARTS = 3;
/** Chance that one amount on all panels is taken for several. */
const FALSE_ALARM = 0.01;
/** No gauge tells a removal exactly. */
const LEAST_SD = 1e-3;
const WIDE = normalQuantile(0.975);

/** `stepSd`: what a step takes on one panel and on another, SD of its logarithm; `isOwnPlan`: a plan of these readings. */
export function commonShift(
  parts: readonly PartLeft[],
  { stepSd, isOwnPlan }: { readonly stepSd: number; readonly isOwnPlan: boolean },
): CommonShift | null {
  const lost = parts.flatMap((part) => lossOf(part, stepSd));
  if (lost.length < LEAST_PARTS || lost.length < parts.length) return null;
  const isHalf = (isMore: (part: PartLeft) => boolean): boolean =>
    2 * parts.filter(isMore).length >= parts.length;
  const isPlanned = isOwnPlan && parts.every(({ foretold }) => foretold !== null);
  return (
    (isPlanned && isHalf((part) => isOverAllowed(part) || part.against === 'more')
      ? oneExcess(lost)
      : null) ??
    (isHalf(({ overruns }) => isOver(overruns)) ? oneLoss(lost) : null) ??
    (isPlanned ? oneShortfall(lost) : null)
  );
}

const isOverAllowed = ({ overruns }: PartLeft): boolean => overruns.length > 0;

/** What came off a part, and what was to. */
type Loss = { readonly removed: number; readonly foretold: number; readonly u: number };

function lossOf({ comparison: { change, paint }, foretold }: PartLeft, stepSd: number) {
  if (change === null || paint !== null) return [];
  const { median = 0, logSd = 0 } = foretold?.removal ?? {};
  const u = Math.hypot(LEAST_SD, scatterOfChange(change), Math.min(stepSd, logSd) * median);
  return [{ removed: change.removed.value, foretold: median, u }];
}

/** Less than the plan by one amount, and by no factor. */
function oneShortfall(lost: readonly Loss[]): CommonShift | null {
  const shortfall = oneExcess(
    lost.map(({ removed, foretold, u }) => ({ removed: -removed, foretold: -foretold, u })),
  );
  return shortfall === null || shortfall.asByRate
    ? null
    : { ...shortfall, by: micrometres(-shortfall.by) };
}

/** More than the plan by one amount. */
function oneExcess(lost: readonly Loss[]): CommonShift | null {
  const excess = oneAmount(lost.map((one) => ({ ...one, value: one.removed - one.foretold })));
  return (
    excess && {
      ...excess,
      over: 'plan',
      parts: lost.length,
      leftAlone: lost.filter(({ foretold }) => foretold === 0).length,
      asByRate: isByRate(lost),
    }
  );
}

const oneLoss = (lost: readonly Loss[]): CommonShift | null => {
  const all = oneAmount(lost.map((one) => ({ ...one, value: one.removed })));
  return all && { ...all, over: 'nothing', parts: lost.length, leftAlone: 0, asByRate: true };
};

type Amount = { readonly value: number; readonly u: number };

/** Null where some is not above nothing, all together are not surely so, or they are not alike. */
function oneAmount(amounts: readonly Amount[]): Pick<CommonShift, 'by' | 'within'> | null {
  const weights = sum(amounts.map(({ u }) => u ** -2));
  const by = sum(amounts.map(({ value, u }) => value / u ** 2)) / weights;
  const within = WIDE / Math.sqrt(weights);
  const isMore = by > within && amounts.every(({ value }) => value > 0);
  return isMore && isChance(amounts.map(({ value, u }) => (value - by) / u))
    ? { by: micrometres(by), within: micrometres(within) }
    : null;
}

/** Whether removed = k · foretold holds on all of them, no k below 0. */
function isByRate(lost: readonly Loss[]): boolean {
  const k =
    sum(lost.map(({ removed, foretold, u }) => (removed * foretold) / u ** 2)) /
    Math.max(Number.MIN_VALUE, sum(lost.map(({ foretold, u }) => (foretold / u) ** 2)));
  const factor = Math.max(0, k);
  return isChance(lost.map(({ removed, foretold, u }) => (removed - factor * foretold) / u));
}

/** Whether residuals in units of what each is uncertain by, one figure fitted, are no more than chance makes. */
const isChance = (residuals: readonly number[]): boolean =>
  sum(residuals.map((one) => one ** 2)) <= chiSquareQuantile(1 - FALSE_ALARM, residuals.length - 1);

export const shiftDoubts = (
  shift: CommonShift | null,
  [before, after]: readonly [string, string],
): readonly Diagnostic[] =>
  shift === null
    ? []
    : [
        warning(
          'compare-common-shift',
          `${readsSo(shift, shownFile(before), shownFile(after))} by about one amount on all ${shift.parts} panels, ${tell(shiftSaid(shift), 'um')}: so does a gauge that was set or zeroed otherwise, or another gauge`,
          {
            at: { file: after },
            hint: `read shims, and a place that no pad touched, as they were read before; until then nothing more comes off${isOfGauge(shift) ? ', and no rate is learned by it' : ''}`,
          },
        ),
      ];

const readsSo = ({ by }: CommonShift, before: string, after: string): string =>
  by > 0 ? `${after} reads less than ${before}` : `${after} shows less off since ${before}`;

/** `3.1 ± 0.4 µm more than was planned` */
export const shiftSaid = ({ by, within, over }: CommonShift): Sentence =>
  says`${bare(Math.abs(by))} ± ${um(within)}${over === 'plan' ? ` ${by > 0 ? 'more' : 'less'} than was planned` : ' in all'}`;
