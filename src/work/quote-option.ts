/** A plan for one aim and what it takes → one row of a quote. */
import { sum } from '../base/sum.ts';
import { type Micrometres, type Minutes, micrometres } from '../base/units.ts';
import {
  isTouched,
  isWorked,
  type PanelPlan,
  type Plan,
  workedParts,
} from '../correction/plan/plan.ts';
import { chargeable, chargedTime, overrunChance } from './chargeable.ts';
import type { WorkEstimate } from './estimate-work.ts';
import { divided, type Minor } from './money.ts';
import { type PricedJob, priceJob } from './price-job.ts';
import { type PriceList, rateOf } from './price-list.ts';

/** As it was asked for: `correct`, `70 %`; and the share of the defects it means. */
export type QuoteAim = { readonly name: string; readonly share: number };

/** What the car gets and gives under one aim. */
export type AimOutcome = {
  /** Share of the general defects that go, over the area that polishing can help. */
  readonly expected: number;
  /** Mean film taken over the same area; null where there is none. */
  readonly spent: Micrometres | null;
  /** The least that is expected to be left of the topcoat on the thinnest part of a panel that is worked. */
  readonly left: Micrometres | null;
  /** The highest risk of a panel that is worked. */
  readonly risk: number | null;
};

export type QuoteOption = AimOutcome & {
  readonly aim: QuoteAim;
  readonly plan: Plan;
  readonly work: WorkEstimate;
  /** Panels, or zones of them, on which less than the aim is to be had. */
  readonly short: readonly PanelPlan[];
  /** What is charged for, of one person's hands; null where there is nothing to work. */
  readonly charged: Minutes | null;
  /** Chance that the job takes longer than is charged. */
  readonly overrun: number | null;
  /** Null without a price list, without a rate for all that is done, and without work. */
  readonly priced: PricedJob | null;
};

export type QuoteTerms = {
  /** Null where the shop has none. */
  readonly prices: PriceList | null;
  /** Share of such jobs that keep within the hours that are charged, 0–1. */
  readonly hoursShare: number;
  /** Shortfalls of correction that count as none, as the planner has it. */
  readonly equalShortfall: number;
};

export function quoteOption(
  aim: QuoteAim,
  { plan, work }: { readonly plan: Plan; readonly work: WorkEstimate },
  { prices, hoursShare, equalShortfall }: QuoteTerms,
): QuoteOption {
  const charged = isAnyTouched(plan) ? chargedTime(work.job.time, hoursShare) : null;
  return {
    aim,
    plan,
    work,
    ...aimOutcome(plan),
    short: shortParts(plan, equalShortfall),
    charged,
    overrun: charged === null ? null : overrunChance(work.job.time, charged),
    priced:
      charged === null || prices === null || missingRates(work, prices).length > 0
        ? null
        : priceJob(chargeable(work, charged), prices),
  };
}

/** A row of which only the figures are kept. */
export type CurvePoint = Pick<AimOutcome, 'expected' | 'spent'> & { readonly aim: QuoteAim };

export function curvePoint(aim: QuoteAim, plan: Plan): CurvePoint {
  const { expected, spent } = aimOutcome(plan);
  return { aim, expected, spent };
}

const isAnyTouched = (plan: Plan): boolean => workedParts(plan).some(isTouched);

/** Skills that the job needs and the list has no rate for. */
export const missingRates = (
  { stages }: WorkEstimate,
  { labour }: PriceList,
): readonly string[] => [
  ...new Set(
    stages.flatMap(({ stage: { skill } }) => (rateOf(labour, skill) === null ? [skill] : [])),
  ),
];

/** Parts whose marks polishing could help: read, bare, with sound clear and something to correct. */
const correctable = (plan: Plan): readonly PanelPlan[] =>
  workedParts(plan).filter(
    ({ survey: { points, facts }, verdict, reasons }) =>
      points.length > 0 &&
      !facts.covered &&
      verdict !== 'refinish' &&
      reasons[0]?.code !== 'nothing-to-correct',
  );

export function aimOutcome(plan: Plan): AimOutcome {
  const parts = correctable(plan);
  const area = sum(parts.map(areaOf));
  const over = (figureOf: (part: PanelPlan) => number): number =>
    sum(parts.map((part) => areaOf(part) * figureOf(part))) / area;
  const worked = parts.filter(isWorked);
  const left = worked.flatMap(({ survey: { topcoat }, removal }) =>
    topcoat === null ? [] : [topcoat.clear.mean - removal.mean],
  );
  const risks = worked.flatMap(({ risk }) => risk ?? []);
  return {
    expected: area === 0 ? 0 : over(({ expected }) => expected),
    spent: area === 0 ? null : micrometres(over(({ removal }) => removal.mean)),
    left: left.length === 0 ? null : micrometres(Math.min(...left)),
    risk: risks.length === 0 ? null : Math.max(...risks),
  };
}

const areaOf = ({ survey }: PanelPlan): number => survey.panel.area;

const shortParts = (plan: Plan, equalShortfall: number): readonly PanelPlan[] =>
  correctable(plan).filter(({ aimed, expected }) => expected < aimed - equalShortfall);

/** What each further per cent of correction costs on the way from one row to another. */
export type Marginal = { readonly film: Micrometres; readonly price: Minor | null };

/** Closer than this, in per cent, two rows correct the same. */
const SAME_PERCENT = 0.05;

/** Null where the second does not correct more than the first. */
export function marginal(
  from: Pick<QuoteOption, 'expected' | 'spent' | 'priced'>,
  to: Pick<QuoteOption, 'expected' | 'spent' | 'priced'>,
): Marginal | null {
  const percent = 100 * (to.expected - from.expected);
  if (percent < SAME_PERCENT || from.spent === null || to.spent === null) return null;
  const price =
    from.priced === null || to.priced === null
      ? null
      : perPercent(to.priced.total - from.priced.total, percent);
  return { film: micrometres((to.spent - from.spent) / percent), price };
}

/** To the nearest minor unit; the per cents are counted in hundredths of one. */
const perPercent = (price: Minor, percent: number): Minor =>
  divided(100n * price, BigInt(Math.round(100 * percent)), 'half-up');
