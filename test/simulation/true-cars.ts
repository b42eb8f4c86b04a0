/**
 * Cars whose true film is known: each panel's clear and what lies under it are drawn, the gauge reads
 * them with its errors, and the paint later gives what its true hardness gives.
 */

import type { PanelPlan } from '../../src/correction/plan/plan.ts';
import type { Reading } from '../../src/film/reading.ts';
import type { VehicleTemplate } from '../../src/film/template/template.ts';
import { reading } from '../film/car-builder.ts';
import { normal } from '../samples/seeded-random.ts';

export type Random = () => number;

const uniform = (random: Random, low: number, high: number): number =>
  low + (high - low) * random();

export type World = {
  /** Means over cars and panels before any work, µm. */
  readonly clearMean: number;
  readonly underMean: number;
  /**
   * Whether the 6 µm of clear and the 10 µm under it are the SD over the points of all panels, as the
   * model has it (its variance between panels is σ² less the part within), or of the panel means alone.
   */
  readonly clearSpread: 'panel-means' | 'points';
  /** Share of the between-panel variance that all panels of one car have in common. */
  readonly carShare: number;
  /** Correlation, between panels, of the clear with what lies under it; none where it is not given. */
  readonly layerCorrelation?: number;
  /** Factor on every true removal. */
  readonly softness: number;
  /** Film over a panel: normal, or with a thin tail (a reversed gamma of shape 4). */
  readonly film: 'normal' | 'skewed';
};

/** As the model assumes: half of the variance between panels is common to a car's panels. */
export const assumedWorld: World = {
  clearMean: 42,
  underMean: 70,
  clearSpread: 'points',
  carShare: 0.5,
  softness: 1,
  film: 'normal',
};

const CLEAR_SD = 6;
const UNDER_SD = 10;
/** SD over a panel's face of clear and of what is under it; together about 5. */
const WITHIN_SD = Math.sqrt(12.5);
const POINTS = 5;
const REPEATABILITY = 1.5;
const HARDNESS_LOG_SD = 0.35;
const COMBINATION_LOG_SD = 0.4;
const STEP_LOG_SD = 0.15;
/** 5 % quantile of the standard normal, and of (4 − Γ(4))/2, from the χ² table: (4 − 15.507/2)/2. */
const LOW_QUANTILE = { normal: -1.6448536, skewed: (4 - 15.507 / 2) / 2 } as const;

const shapeDraw = (random: Random, film: World['film']): number => {
  if (film === 'normal') return normal(random);
  let gamma = 0;
  for (let i = 0; i < 4; i += 1) gamma -= Math.log(1 - random());
  return (4 - gamma) / 2;
};

export type TruePanel = { readonly id: string; readonly clearOnThinnest: number };
export type TrueCar = {
  readonly readings: readonly Reading[];
  readonly panels: ReadonlyMap<string, TruePanel>;
};

export function drawCar(template: VehicleTemplate, world: World, random: Random): TrueCar {
  const calibration = uniform(random, -1, 1);
  const clearOfCar = normal(random);
  const underOfCar = normal(random);
  const mixed = (ofCar: number): number =>
    Math.sqrt(world.carShare) * ofCar + Math.sqrt(1 - world.carShare) * normal(random);
  const clearSd =
    world.clearSpread === 'panel-means' ? CLEAR_SD : Math.sqrt(CLEAR_SD ** 2 - WITHIN_SD ** 2);
  const underSd =
    world.clearSpread === 'panel-means' ? UNDER_SD : Math.sqrt(UNDER_SD ** 2 - WITHIN_SD ** 2);
  const readings: Reading[] = [];
  const panels = new Map<string, TruePanel>();
  for (const { id } of template.panels) {
    const taken = uniform(random, 0, 4);
    const alike = world.layerCorrelation ?? 0;
    const ofClear = mixed(clearOfCar);
    const ofUnder = alike * ofClear + Math.sqrt(1 - alike ** 2) * mixed(underOfCar);
    const clear = world.clearMean + clearSd * ofClear - taken;
    const under = world.underMean + underSd * ofUnder;
    for (let point = 1; point <= POINTS; point += 1) {
      const film =
        clear + under + WITHIN_SD * (shapeDraw(random, world.film) + shapeDraw(random, world.film));
      const error = calibration * (1 + 0.02 * film) + REPEATABILITY * normal(random);
      readings.push(reading(id, `${point}`, Math.round((film + error) * 10) / 10));
    }
    panels.set(id, { id, clearOnThinnest: clear + WITHIN_SD * LOW_QUANTILE[world.film] });
  }
  return { readings, panels };
}

/** What the steps truly take on a car: one hardness, one own deviation per combination, noise per step. */
export function drawPaint(world: World, random: Random): (plan: PanelPlan) => number {
  const hardness = world.softness * Math.exp(HARDNESS_LOG_SD * normal(random));
  const own = new Map<string, number>();
  return ({ steps }) =>
    steps.reduce((sum, { combination, removal }) => {
      const deviation = own.get(combination.id) ?? Math.exp(COMBINATION_LOG_SD * normal(random));
      own.set(combination.id, deviation);
      return sum + removal * hardness * deviation * Math.exp(STEP_LOG_SD * normal(random));
    }, 0);
}
