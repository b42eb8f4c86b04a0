/** The chain of numbers of a combination: from what is set on the machine to what comes off, and how warm it gets. */
import {
  type DegreesCelsius,
  type Kelvins,
  kelvins,
  type MetresPerSecond,
  type Micrometres,
  type Minutes,
  metresPerSecond,
  micrometres,
  type Seconds,
  seconds,
  squareMetres,
} from '../../base/units.ts';
import { removalQuantile } from '../../film/limits/removal-risk.ts';
import {
  type HeatVerdict,
  heatVerdict,
  panelFlux,
  passWarming,
  standingTime,
  warmest,
  workingWarming,
} from '../heat/heat.ts';
import { SKINS, type Skin } from '../heat/heat-model.ts';
import type { LearnedRate } from '../rates/shop-rates.ts';
import type { CorrectionModel, OwnRate, Stage } from './catalogue.ts';
import { type Combination, stagesOf } from './combination.ts';
import { removalLogSd, removalPriors } from './removal-knowledge.ts';
import {
  contactPressure,
  contactTime,
  removalPerSet,
  setTime,
  slidingSpeed,
} from './removal-rate.ts';

/** A removal per set with its 5 % and 95 % quantiles: nine cases of ten lie between. */
export type RateRange = {
  readonly median: Micrometres;
  readonly low: Micrometres;
  readonly high: Micrometres;
  readonly logSd: number;
};

export type SkinHeat = {
  readonly skin: Skin;
  readonly perPass: Kelvins;
  readonly perSet: Kelvins;
  /** After as many sets of one combination as a cut may have. */
  readonly perStep: Kelvins;
  readonly reached: DegreesCelsius;
  readonly verdict: HeatVerdict;
  /** How long the pad may stand on one spot, running, until the panel is at the caution. */
  readonly standing: Seconds;
};

export type MethodChain = {
  readonly combination: Combination;
  readonly stages: readonly Stage[];
  /** Pa */
  readonly pressure: number;
  readonly speed: MetresPerSecond;
  readonly contact: Seconds;
  /** Preston coefficient of this pad and product, 1/Pa. */
  readonly coefficient: number;
  readonly derived: RateRange;
  /** The shop's own measurement, which then is the rate in force. */
  readonly own: (OwnRate & { readonly range: RateRange }) | null;
  /** What the shop's earlier vehicles taught of it, which then is the rate in force; null without any of it. */
  readonly learned: (LearnedRate & { readonly range: RateRange }) | null;
  readonly rate: RateRange;
  readonly sectionMinutes: Minutes;
  readonly minutesPerSquareMetre: Minutes;
  readonly heat: readonly SkinHeat[];
};

/** Everything that follows from a combination's settings; `pause` is the time between two sets of a section. */
export function methodChain(
  combination: Combination,
  model: CorrectionModel,
  pause: Seconds,
): MethodChain {
  const { machine, pad, product } = combination;
  const derived = rateRange(removalPerSet(combination, model.removal), removalLogSd(model.removal));
  const own = ownRate(combination.id, model);
  const { range, learned } = rateInForce(combination, model);
  return {
    combination,
    stages: stagesOf(combination),
    pressure: contactPressure(machine),
    speed: metresPerSecond(slidingSpeed(machine)),
    contact: seconds(contactTime(machine, model.removal)),
    coefficient: model.removal.preston * pad.factor * product.factor,
    derived,
    own,
    learned: learned === undefined ? null : { ...learned, range },
    rate: range,
    sectionMinutes: setTime(machine, model.removal.section, model.removal),
    minutesPerSquareMetre: setTime(machine, squareMetres(1), model.removal),
    heat: SKINS.map((skin) => skinHeat(combination, model, skin, pause)),
  };
}

function rateRange(median: Micrometres, logSd: number): RateRange {
  const expected = { median, logSd };
  return {
    median,
    low: removalQuantile(expected, 0.05),
    high: removalQuantile(expected, 0.95),
    logSd,
  };
}

/** A measured rate keeps the spread of paints and steps; its own ln-SD takes the combination's place. */
function ownRate(id: string, { rates, removal }: CorrectionModel): MethodChain['own'] {
  const own = rates.get(id);
  if (own === undefined) return null;
  const logSd = removalLogSd({
    ...removal,
    combinationLogSd: own.logSd ?? removal.combinationLogSd,
  });
  return { ...own, range: rateRange(micrometres(own.rate), logSd) };
}

/** On the next vehicle, over paints as this shop meets them. */
function rateInForce({ id, perSet }: Combination, model: CorrectionModel) {
  const { hardness, combinationSd, stepSd } = removalPriors('unknown', model);
  const logSd = Math.hypot(hardness.sd, combinationSd(id), stepSd);
  return {
    range: rateRange(micrometres(perSet * Math.exp(hardness.mean)), logSd),
    learned: model.learned?.combinations.get(id),
  };
}

function skinHeat(
  { machine }: Combination,
  model: CorrectionModel,
  skin: Skin,
  pause: Seconds,
): SkinHeat {
  const { heat, correction } = model;
  const after = (sets: number): Kelvins => workingWarming(machine, model, skin, { sets, pause });
  const reached = warmest(machine, model, skin, { sets: correction.mostSets.cut, pause });
  return {
    skin,
    perPass: passWarming(machine, model, skin),
    perSet: after(1),
    perStep: after(correction.mostSets.cut),
    reached,
    verdict: heatVerdict(reached, skin, heat),
    standing: standingTime(
      panelFlux(machine, heat),
      kelvins(Math.max(0, heat.caution - heat.start)),
      skin,
      heat,
    ),
  };
}

/** How much faster one combination cuts than another per minute of machine time. */
export const cutsFasterThan = (one: MethodChain, other: MethodChain): number =>
  one.rate.median / one.sectionMinutes / (other.rate.median / other.sectionMinutes);
