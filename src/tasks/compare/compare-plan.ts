/** What a plan foretold, beside what was measured: panel by panel, and combination by combination. */
import { type Diagnostic, error, type Outcome } from '../../base/diagnostics.ts';
import { normalQuantile } from '../../base/stats/normal.ts';
import { standardUncertainty } from '../../base/uncertainty.ts';
import { micrometres } from '../../base/units.ts';
import type { CorrectionModel } from '../../correction/removal/catalogue.ts';
import { ladder } from '../../correction/removal/combination.ts';
import { againstPlan, type MeasuredRemoval } from '../../correction/removal/measured-removal.ts';
import { removalPriors } from '../../correction/removal/removal-knowledge.ts';
import { learnRemoval } from '../../correction/spot/removal-posterior.ts';
import type {
  LogFactor,
  RemovalPriors,
  TrialObservation,
} from '../../correction/spot/trial-observation.ts';
import type { FilmChange } from '../../film/compare/compare-change.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import type { ExpectedRemoval } from '../../film/limits/removal-risk.ts';
import { isSameVehicle } from '../../film/same-vehicle.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { ForetoldPanel, ForetoldStep, PlanFile } from '../../formats/plan-file.ts';
import { settingsPanels } from '../settings/settings-panels.ts';

/** What was foretold of a panel's part that was then measured. */
export type ForetoldPart = ForetoldPanel & { readonly removal: ExpectedRemoval };

export type Planned = ReadonlyMap<string, ForetoldPanel>;

/** The plan's panels by the template's ids; a plan of another vehicle is refused. */
export function plannedPanels(
  plan: Placed<PlanFile> | undefined,
  vehicle: string | null,
  template: VehicleTemplate,
): Outcome<Planned> {
  if (plan === undefined) return { value: new Map(), diagnostics: [] };
  const { value, placeOf } = plan;
  if (value.vehicle !== null && vehicle !== null && !isSameVehicle(value.vehicle, vehicle)) {
    return { diagnostics: [otherVehicle(value.vehicle, vehicle, plan)] };
  }
  return settingsPanels(
    value.panels.map((panel) => ({
      name: panel.panel,
      value: panel,
      at: placeOf([...panel.path, 'panel']),
    })),
    template,
  );
}

const otherVehicle = (planned: string, read: string, { placeOf }: Placed<PlanFile>): Diagnostic =>
  error('plan-mismatch', `the plan is of vehicle "${planned}", the readings are of "${read}"`, {
    at: placeOf(['vehicle']),
    hint: 'give the plan of this vehicle',
  });

/** A panel, or each zone of one in two, with what was foretold and measured there. */
export type MeasuredPart = { readonly foretold: ForetoldPart; readonly measured: MeasuredRemoval };

/** Parts that were to be worked and were measured; film that came on is no measurement of a removal. */
export function measuredParts(
  compared: readonly PanelComparison[],
  planned: Planned,
): readonly MeasuredPart[] {
  return compared.flatMap((one) => {
    const plan = planned.get(one.panel.id);
    if (plan === undefined) return [];
    const zones = one.zones.flatMap((zone) =>
      partOf(
        zone,
        plan.zones.find((foretold) => foretold.zone === zone.zone),
      ),
    );
    return zones.length > 0 ? zones : partOf(one, plan);
  });
}

const partOf = (
  { change, gained }: PanelComparison,
  foretold: ForetoldPanel | undefined,
): readonly MeasuredPart[] =>
  change === null || gained || foretold === undefined || foretold.removal === null
    ? []
    : [{ foretold: { ...foretold, removal: foretold.removal }, measured: measuredOf(change) }];

export const measuredOf = ({ removed }: FilmChange): MeasuredRemoval => ({
  value: removed.value,
  standardError: micrometres(standardUncertainty(removed)),
});

/** The step that was to take most of it: one more set is a set of that. */
export const mainStep = ({ steps }: ForetoldPanel): ForetoldStep | undefined =>
  steps.reduce<ForetoldStep | undefined>(
    (most, step) => (most === undefined || step.removal > most.removal ? step : most),
    undefined,
  );

/** How a combination took film against what was foretold, over the panels of which it was to take most. */
export type RateSeen = {
  readonly combination: string;
  readonly panels: number;
  readonly factor: LogFactor;
  /** Null where 1 lies in the 95 % interval of the factor. */
  readonly looks: 'too-low' | 'too-high' | null;
  /** Whether the plan itself held its rate to be as far off as that in 95 of 100 cases: nothing else need be wrong. */
  readonly withinKnown: boolean;
};

/** What was seen of a plan's rates: the factor on what it foretold, by combination. */
export type SeenRates = {
  readonly rates: readonly RateSeen[];
  /** The forecast of so much more by that step; on a part that lost more than the others foretell, by its own rate. */
  readonly oneMoreSet: (step: ForetoldStep, on: MeasuredPart | undefined) => ExpectedRemoval;
  /** A part's own forecast, by what all the other parts showed. */
  readonly byTheOthers: (part: MeasuredPart) => ExpectedRemoval;
};

export function seenRates(parts: readonly MeasuredPart[], model: CorrectionModel): SeenRates {
  const priors = priorsOfPlan(parts, model);
  const observations = new Map(parts.map((part) => [part, observationOf(part)]));
  const all = learnRemoval([...observations.values()], priors);
  const byStep = (median: number, factor: LogFactor): ExpectedRemoval => ({
    median: micrometres(median * Math.exp(factor.mean)),
    logSd: Math.hypot(factor.sd, priors.stepSd),
  });
  const byTheOthers = (part: MeasuredPart): ExpectedRemoval => {
    const others = [...observations].flatMap(([one, seen]) => (one === part ? [] : [seen]));
    return byStep(
      part.foretold.removal.median,
      learnRemoval(others, priors).of(keyOf(part.foretold)),
    );
  };
  const keys = new Set(parts.map(({ foretold }) => keyOf(foretold)));
  return {
    rates: [...keys].sort().map((combination) => ({
      combination,
      panels: parts.filter(({ foretold }) => keyOf(foretold) === combination).length,
      ...judged(all.of(combination)),
      withinKnown: isWithinKnown(all.of(combination), combination, priors),
    })),
    oneMoreSet: ({ combination, sets, removal }, on) => {
      const usual = byStep(removal / sets, all.of(combination));
      return on === undefined || againstPlan(byTheOthers(on), on.measured) !== 'more'
        ? usual
        : byOwnRate(on, removal / sets, usual);
    },
    byTheOthers,
  };
}

/**
 * What took more of a panel than its step takes of others, its own paint or the hand on it, takes as much of the next
 * set: never less than what all panels show.
 */
function byOwnRate(
  { foretold, measured }: MeasuredPart,
  perSet: number,
  usual: ExpectedRemoval,
): ExpectedRemoval {
  const median = (perSet * measured.value) / foretold.removal.median;
  return median <= usual.median
    ? usual
    : {
        median: micrometres(median),
        logSd: Math.hypot(usual.logSd, measured.standardError / measured.value),
      };
}

const keyOf = (foretold: ForetoldPanel): string => mainStep(foretold)?.combination ?? '';

const observationOf = ({ foretold, measured }: MeasuredPart): TrialObservation => ({
  combination: keyOf(foretold),
  foretold: foretold.removal.median,
  removed: { value: measured.value, standardError: measured.standardError },
  cleared: null,
});

/** So many SDs on either side hold 95 % of a normal logarithm. */
const WIDE = normalQuantile(0.975);

function judged(factor: LogFactor): Pick<RateSeen, 'factor' | 'looks'> {
  if (factor.mean > WIDE * factor.sd) return { factor, looks: 'too-low' };
  return { factor, looks: factor.mean < -WIDE * factor.sd ? 'too-high' : null };
}

const isWithinKnown = (
  { mean }: LogFactor,
  combination: string,
  { hardness, combinationSd }: RemovalPriors,
): boolean => Math.abs(mean) <= WIDE * Math.hypot(hardness.sd, combinationSd(combination));

/**
 * What the plan itself held of its rates: its own spread, less that of a step, shared between the paint and
 * the combination as the model has it. What test spots taught is in it already, middle and spread.
 */
function priorsOfPlan(parts: readonly MeasuredPart[], model: CorrectionModel): RemovalPriors {
  const usual = removalPriors('unknown', model);
  const rateVariance = new Map<string, number>();
  for (const { foretold } of parts) {
    const own = Math.max(0, foretold.removal.logSd ** 2 - usual.stepSd ** 2);
    const key = keyOf(foretold);
    rateVariance.set(key, Math.max(own, rateVariance.get(key) ?? 0));
  }
  const paint = usual.hardness.sd ** 2;
  const ofPaint = paint / (paint + usual.usualCombinationSd ** 2);
  const shared = ofPaint * Math.min(...rateVariance.values(), paint / ofPaint);
  const own = (combination: string): number => {
    const known = rateVariance.get(combination);
    return known === undefined ? usual.usualCombinationSd : Math.sqrt(known - shared);
  };
  return {
    ...usual,
    hardness: { mean: 0, sd: Math.sqrt(shared) },
    combinationSd: own,
  };
}

/** One set of the mildest combination of the shop on a machine with a full-size pad; null without any. */
export function mildestSet(
  model: CorrectionModel,
  logSd: number,
): { readonly combination: string; readonly removal: ExpectedRemoval } | null {
  const machines = model.machines.filter(({ motion }) => motion.kind !== 'hand');
  const fullSize = Math.max(0, ...machines.map(({ padDiameter }) => padDiameter));
  const mildest = ladder(model).find(
    ({ machine }) => machines.includes(machine) && machine.padDiameter === fullSize,
  );
  return mildest === undefined
    ? null
    : { combination: mildest.id, removal: { median: mildest.perSet, logSd } };
}
