/** A vehicle's survey → the aims side by side, each with its film, hours and price; what is left out. */
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import type { Panel } from '../../film/template/template.ts';
import type { Aim } from '../../formats/json/setting-values.ts';
import { cheaperAims } from '../../work/cheaper-aims.ts';
import { type Exclusion, exclusionsOf } from '../../work/exclusions.ts';
import {
  type CurvePoint,
  curvePoint,
  missingRates,
  type QuoteAim,
  type QuoteOption,
  type QuoteTerms,
  quoteOption,
} from '../../work/quote-option.ts';
import { type AimPlan, planAims } from '../plan/plan-aims.ts';
import { planRequestOf } from '../plan/plan-request.ts';
import { type PlanResult, planResult, workOf } from '../plan/plan-vehicle.ts';
import { recordedDefects } from '../plan/recorded-defects.ts';
import type { LoadedFile } from '../read/read-request.ts';
import { priceProblems } from '../settings/price-problems.ts';
import { type Settings, withAim } from '../settings/settings.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { type OnceReadAgain, onceReadAgain } from './once-read-again.ts';
import { quoteAssumptions } from './quote-assumptions.ts';

export type QuoteResult = PlanResult & {
  /** From the mildest aim to the strongest. */
  readonly options: readonly QuoteOption[];
  /** What of each is for panels that are worked only once they are read again. */
  readonly onceReadAgain: ReadonlyMap<QuoteAim, OnceReadAgain>;
  /** Of an aim that is quoted alone, the first further one by name that clears as much and comes to less. */
  readonly cheaper: QuoteOption | null;
  /** What aims in even steps clear, spend and cost, to draw a curve through. */
  readonly curve: readonly CurvePoint[];
  readonly exclusions: readonly Exclusion[];
  /** Keys of the shop file without which there is no price; none where there is one. */
  readonly missingKeys: readonly string[];
};

export function quoteVehicle(
  surveyed: SurveyResult,
  panels: readonly Panel[],
  defects: LoadedFile | undefined,
): Outcome<QuoteResult> {
  const { settings, survey } = surveyed;
  const aims = quotedAims(settings);
  const { value: recorded, diagnostics: found } = recordedDefects(
    survey.template,
    settings,
    defects,
  );
  if (recorded === undefined) return { diagnostics: found };
  const request = planRequestOf(surveyed, panels, recorded);
  const planAt = planAims(surveyed, request);
  const optionAt = (aim: Aim): QuoteOption => optionOf(planAt(aim), settings);
  const options = aims.map(optionAt);
  const diagnostics = [...found, ...priceProblems(options, settings.money, settings.models.price)];
  if (hasErrors(diagnostics)) return { diagnostics };
  const strongest = aims.at(-1) ?? settings.saidAim.value;
  const { plan, work } = planAt(strongest);
  const planned = planResult(
    { ...surveyed, settings: withAim(settings, strongest) },
    { plan: plan(), work: work() },
    request,
    { recorded, file: defects },
  );
  const assumptions = planned.assumptions.filter(({ code }) => code !== 'aim');
  const value = {
    ...planned,
    settings,
    assumptions: [...assumptions, ...quoteAssumptions(settings, options)],
    options,
    onceReadAgain: onceReadAgain(options, surveyed, (aim, plan) =>
      quoteOption(aim, { plan, work: workOf(plan, surveyed) }, termsOf(settings)),
    ),
    cheaper: cheaperOption(options, settings, optionAt),
    curve: curveAims(settings).map((aim) => pointOf(planAt(aim))),
    exclusions: exclusionsOf(options),
    missingKeys: missingKeys(settings, options),
  };
  return { value, diagnostics };
}

const NAMED_AIMS = ['enhance', 'correct', 'full'] as const;

/** The one that is typed, or said of the job by its list; else the named ones, and a per cent that a file states, in order. */
export function quotedAims({ saidAim, correction }: Settings): readonly Aim[] {
  const { value, origin } = saidAim;
  if (origin === 'flag' || origin === 'list' || origin === 'environment') return [value];
  const shareOf = (aim: Aim): number =>
    typeof aim === 'number' ? aim / 100 : correction.correction.aims[aim];
  const all: readonly Aim[] = typeof value === 'number' ? [...NAMED_AIMS, value] : NAMED_AIMS;
  return [...all].sort((a, b) => shareOf(a) - shareOf(b));
}

/** None among several: there each is held against the one before it. */
function cheaperOption(
  [only, second]: readonly QuoteOption[],
  { correction }: Settings,
  optionAt: (aim: Aim) => QuoteOption,
): QuoteOption | null {
  if (only === undefined || second !== undefined) return null;
  const { aims } = correction.correction;
  const further = NAMED_AIMS.filter((name) => aims[name] > only.aim.share);
  for (const name of further) {
    const option = optionAt(name);
    const clearsAsMuch = option.expected >= only.expected;
    if (clearsAsMuch && cheaperAims([only, option]).length > 0) return option;
  }
  return null;
}

/** In even steps up to the strongest there is; a per cent, so that haze is judged alike along the curve. */
export function curveAims({ models, correction }: Settings): readonly number[] {
  const { curve } = models.price;
  const last = Math.round(100 * Math.max(...Object.values(correction.correction.aims)));
  const steps = Math.max(0, Math.ceil((last - curve.from) / curve.step));
  return Array.from({ length: steps + 1 }, (_, i) => Math.min(last, curve.from + i * curve.step));
}

const pointOf = ({ aim, decisions }: AimPlan): CurvePoint => curvePoint(aim, decisions);

const optionOf = ({ aim, plan, work }: AimPlan, settings: Settings): QuoteOption =>
  quoteOption(aim, { plan: plan(), work: work() }, termsOf(settings));

const termsOf = ({ money, models, correction }: Settings): QuoteTerms => ({
  prices: money.prices.value?.list ?? null,
  hoursShare: models.price.hours[money.kind.value] / 100,
  equalShortfall: correction.correction.choice.equalShortfall,
});

/** No price is invented: what the shop would have to say for one. */
function missingKeys({ money }: Settings, options: readonly QuoteOption[]): readonly string[] {
  const prices = money.prices.value;
  if (prices === null) return ['prices.currency', 'prices.labour_minor_per_h'];
  const { list } = prices;
  const skills = new Set(options.flatMap(({ work }) => missingRates(work, list)));
  if (skills.size === 0) return [];
  return list.labour.bySkill.size === 0
    ? ['prices.labour_minor_per_h']
    : [...skills].map((skill) => `prices.labour_minor_per_h.${skill}`);
}
