/** Preston's law: what one set of a machine, pad and product takes off a paint of usual hardness. */
import {
  type Micrometres,
  type Minutes,
  micrometres,
  minutes,
  type SquareMetres,
} from '../../base/units.ts';
import type { CorrectionModel, Machine, Pad, Product } from './catalogue.ts';

const METRES_PER_MILLIMETRE = 1e-3;
const MICROMETRES_PER_METRE = 1e6;
const SECONDS_PER_MINUTE = 60;

/** Mean contact pressure under the pad, Pa: F/(πd²/4). */
export function contactPressure({ force, padDiameter }: Machine): number {
  const diameter = padDiameter * METRES_PER_MILLIMETRE;
  return force / ((Math.PI * diameter ** 2) / 4);
}

/**
 * Mean sliding speed under the pad, m/s: rotary (2/3)·ω·d/2; orbital π·throw·f; forced rotation the
 * root of both squares; by hand the rubbing speed.
 */
export function slidingSpeed({ motion, padDiameter }: Machine): number {
  switch (motion.kind) {
    case 'rotary':
      return rotationSpeed(motion.rpm, padDiameter);
    case 'orbital':
      return Math.hypot(
        (Math.PI * motion.throwDiameter * METRES_PER_MILLIMETRE * motion.orbitsPerMinute) /
          SECONDS_PER_MINUTE,
        rotationSpeed(motion.forcedRpm, padDiameter),
      );
    case 'hand':
      return motion.rubbing;
  }
}

const rotationSpeed = (rpm: number, padDiameter: number): number =>
  ((2 / 3) * ((2 * Math.PI * rpm) / SECONDS_PER_MINUTE) * padDiameter * METRES_PER_MILLIMETRE) / 2;

/**
 * Time each spot of a section spends under the pad in one set, s: passes·πd/(4·s·(1 − overlap)).
 * By hand, the share of the rubbing time that the hand's own area gets.
 */
export function contactTime(
  machine: Machine,
  { passes, overlap }: CorrectionModel['removal'],
): number {
  const diameter = machine.padDiameter * METRES_PER_MILLIMETRE;
  if (machine.motion.kind === 'hand') {
    const padArea = (Math.PI * diameter ** 2) / 4;
    return (machine.motion.minutesPerSet * SECONDS_PER_MINUTE * padArea) / machine.motion.handArea;
  }
  return (passes * Math.PI * diameter) / (4 * machine.armSpeed * (1 - overlap));
}

/** Machine time of one set on `area`: passes·A/(s·d·(1 − overlap)). */
export function setTime(
  machine: Machine,
  area: SquareMetres,
  { passes, overlap }: CorrectionModel['removal'],
): Minutes {
  if (machine.motion.kind === 'hand') {
    return minutes((machine.motion.minutesPerSet * area) / machine.motion.handArea);
  }
  const diameter = machine.padDiameter * METRES_PER_MILLIMETRE;
  const seconds = (passes * area) / (machine.armSpeed * diameter * (1 - overlap));
  return minutes(seconds / SECONDS_PER_MINUTE);
}

/** Median removal per set, κ·h·p·v·t (Preston 1927); `hardness` h is 1 for usual paint. */
export function removalPerSet(
  combination: { readonly machine: Machine; readonly pad: Pad; readonly product: Product },
  constants: CorrectionModel['removal'],
  hardness = 1,
): Micrometres {
  const { machine, pad, product } = combination;
  const coefficient = constants.preston * pad.factor * product.factor * hardness;
  const metresRemoved =
    coefficient *
    contactPressure(machine) *
    slidingSpeed(machine) *
    contactTime(machine, constants);
  return micrometres(metresRemoved * MICROMETRES_PER_METRE);
}
