/** `leastcut/methods/1`: what the shop works with, in full. */
import type { Machine, Pad, Product } from '../../correction/removal/catalogue.ts';
import type { MethodChain, RateRange } from '../../correction/removal/method.ts';
import type { MethodList, ShownMethod } from '../../tasks/methods/methods.ts';
import type { RatesReport } from '../../tasks/methods/rates-report.ts';
import type { Assumption } from '../../tasks/settings/assumption.ts';
import { envelope, type RecordContext } from '../envelope.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedFigure, recordedOrNull } from '../recorded.ts';
import { basisOf, chainLines } from './method-words.ts';
import { ratesRecord } from './rates-record.ts';

export const methodListRecord = (
  { machines, pads, products, combinations }: MethodList,
  assumptions: readonly Assumption[],
  context: RecordContext,
  rates: RatesReport | null = null,
): MachineRecord => ({
  ...envelope('methods', { vehicle: null, inputs: [], assumptions }, context),
  own_rates: ratesRecord(rates),
  machines: machines.map(machineRecord),
  pads: pads.map(thingRecord),
  products: products.map(thingRecord),
  combinations: combinations.map(combinationRecord),
});

const machineRecord = ({ id, name, motion, padDiameter, force, armSpeed }: Machine) => ({
  machine: id,
  name,
  motion: motion.kind,
  rpm: motion.kind === 'rotary' ? recorded(motion.rpm) : null,
  throw_mm: motion.kind === 'orbital' ? recorded(motion.throwDiameter) : null,
  orbits_per_min: motion.kind === 'orbital' ? recorded(motion.orbitsPerMinute) : null,
  forced_rpm: motion.kind === 'orbital' ? recorded(motion.forcedRpm) : null,
  pad_mm: recorded(padDiameter),
  force_n: recorded(force),
  arm_speed_m_per_s: recorded(armSpeed),
});

const thingRecord = ({ id, name, factor, haze, stages }: Pad | Product) => ({
  id,
  name,
  factor: recorded(factor),
  haze: recorded(haze),
  stages,
});

const rangeRecord = ({ median, low, high, logSd }: RateRange) => ({
  median: recorded(median),
  low: recorded(low),
  high: recorded(high),
  ln_sd: recorded(logSd),
});

export function combinationRecord(chain: MethodChain) {
  const observed = chain.learned !== null && chain.learned.observations > 0 ? chain.learned : null;
  return {
    combination: chain.combination.id,
    machine: chain.combination.machine.id,
    pad: chain.combination.pad.id,
    product: chain.combination.product.id,
    removal_um_per_set: rangeRecord(chain.rate),
    derived_um_per_set: rangeRecord(chain.derived),
    measured_um_per_set: chain.own === null ? null : rangeRecord(chain.own.range),
    learned_um_per_set: observed === null ? null : rangeRecord(observed.range),
    observations: observed?.observations ?? 0,
    vehicles: observed?.vehicles ?? 0,
    basis: basisOf(chain),
    min_per_section: recorded(chain.sectionMinutes),
    min_per_m2: recorded(chain.minutesPerSquareMetre),
    haze: recorded(chain.combination.haze),
    stages: chain.stages,
  };
}

export const shownMethodRecord = (
  method: ShownMethod,
  assumptions: readonly Assumption[],
  context: RecordContext,
  rates: RatesReport | null = null,
): MachineRecord => ({
  ...envelope('methods', { vehicle: null, inputs: [], assumptions }, context),
  own_rates: ratesRecord(rates),
  shown: method.kind,
  id: method.id,
  name: method.name,
  owned: method.owned,
  numbers: method.numbers.map(({ value, ...rest }) => ({ ...rest, value: recordedFigure(value) })),
  ...(method.kind === 'combination'
    ? {
        combinations: [combinationRecord(method.chain)],
        chain: chainLines(method.chain).map((line) => ({
          ...line,
          value: recordedFigure(line.value),
          range: line.range === null ? null : rangeRecord(line.range),
        })),
        heat: method.chain.heat.map((heat) => ({
          skin: heat.skin,
          per_pass_k: recorded(heat.perPass),
          per_set_k: recorded(heat.perSet),
          per_step_k: recorded(heat.perStep),
          reached_c: recorded(heat.reached),
          verdict: heat.verdict,
          standing_s: recorded(heat.standing),
        })),
        compared_with: method.compared?.with ?? null,
        compared_times: recordedOrNull(method.compared?.times),
        measured_at: method.measuredAt,
      }
    : {
        combinations: method.combinations.map(combinationRecord),
        chain: null,
        heat: null,
        compared_with: null,
        compared_times: null,
        measured_at: null,
      }),
});
