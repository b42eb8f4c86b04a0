/** A plan for one aim and what it takes → one row of a quote. */
import type { Remark } from '../base/remark.ts';
import { sum } from '../base/sum.ts';
import { type Micrometres, type Minutes, micrometres } from '../base/units.ts';
import type { PartDecision } from '../correction/plan/decide-car.ts';
import {
  isTouched,
  isWorked,
  type PanelPlan,
  type Plan,
  workedParts,
} from '../correction/plan/plan.ts';
import type { PanelSurvey } from '../film/survey.ts';
import { chargeable, chargedTime, overrunChance } from './chargeable.ts';
import type { WorkEstimate } from './estimate-work.ts';
import { divided, type Minor } from './money.ts';
import { type PricedJob, priceJob } from './price-job.ts';
import { type PriceList, rateOf } from './price-list.ts';

/** As it was asked for: `correct`, `70 %`; and the share of the defects it means. */
export type QuoteAim = { readonly name: string; readonly share: number };

/** What the car gets and gives under one aim. */
export type AimOutcome = {
  /** Share of the general defects that go, over all paint that was read, is bare and sound, and has some. */
  readonly expected: number;
  /** Mean film taken over the same area; null where there is none. */
  readonly spent: Micrometres | null;
  /** Both over what is worked alone; null where nothing is. */
  readonly polished: { readonly expected: number; readonly spent: Micrometres } | null;
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

/** From what is decided on each part: its plan with all that is said of it is not needed. */
export const curvePoint = (aim: QuoteAim, decisions: readonly PartDecision[]): CurvePoint => ({
  aim,
  ...overArea(
    decisions
      .filter((one) => isCorrectable(one.part, one.kind === 'none' ? one.reason : undefined))
      .map((one) => ({
        area: one.part.panel.area,
        expected: one.kind === 'none' ? 0 : one.taken.correction,
        spent: one.kind === 'none' ? 0 : one.taken.mean,
      })),
  ),
});

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

/** Whether a part's marks count: read, bare, with sound clear and something to correct. */
const isCorrectable = (
  { points, facts }: PanelSurvey,
  reason: Pick<Remark, 'code'> | undefined,
): boolean =>
  points.length > 0 &&
  !facts.covered &&
  reason?.code !== 'clear-coat-failure' &&
  reason?.code !== 'nothing-to-correct';

const correctable = (plan: Plan): readonly PanelPlan[] =>
  workedParts(plan).filter(({ survey, reasons: [first] }) => isCorrectable(survey, first));

export function aimOutcome(plan: Plan): AimOutcome {
  const parts = correctable(plan);
  const worked = parts.filter(isWorked);
  const left = worked.flatMap(({ survey: { topcoat }, removal }) =>
    topcoat === null ? [] : [topcoat.clear.mean - removal.mean],
  );
  const risks = worked.flatMap(({ risk }) => risk ?? []);
  const { expected, spent } = overArea(worked.map(gotAndGiven));
  return {
    ...overArea(parts.map(gotAndGiven)),
    polished: spent === null ? null : { expected, spent },
    left: left.length === 0 ? null : micrometres(Math.min(...left)),
    risk: risks.length === 0 ? null : Math.max(...risks),
  };
}

const gotAndGiven = ({ survey, expected, removal }: PanelPlan) => ({
  area: survey.panel.area,
  expected,
  spent: removal.mean,
});

/** Means of what some parts get and give, each by its area. */
function overArea(
  parts: readonly { readonly area: number; readonly expected: number; readonly spent: number }[],
): Pick<AimOutcome, 'expected' | 'spent'> {
  const area = sum(parts.map((part) => part.area));
  if (area === 0) return { expected: 0, spent: null };
  return {
    expected: sum(parts.map((part) => part.area * part.expected)) / area,
    spent: micrometres(sum(parts.map((part) => part.area * part.spent)) / area),
  };
}

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
  const percent = percentOf(to) - percentOf(from);
  if (percent < SAME_PERCENT || from.spent === null || to.spent === null) return null;
  const price =
    from.priced === null || to.priced === null
      ? null
      : perPercent(to.priced.total - from.priced.total, percent);
  return { film: micrometres((to.spent - from.spent) / percent), price };
}

/** Parts of a per cent, as a record shows it: whoever divides its figures gets the same. */
const PARTS = 1_000_000;

const percentOf = ({ expected }: Pick<QuoteOption, 'expected'>): number =>
  Math.round(PARTS * 100 * expected) / PARTS;

/** To the nearest minor unit. */
const perPercent = (price: Minor, percent: number): Minor =>
  divided(BigInt(PARTS) * price, BigInt(Math.round(PARTS * percent)), 'half-up');
