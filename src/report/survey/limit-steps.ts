/** How a limit comes to what it allows, in sums that can be followed by hand. */
import { LEAST_TOLD, shown } from '../../base/rounding.ts';
import { bare, nextFact, type Sentence, says, um } from '../../base/sentence.ts';
import type { Micrometres } from '../../base/units.ts';
import type { LimitWhy } from '../../film/help/panel-why.ts';
import type { AllowanceSteps } from '../../film/limits/allowance-steps.ts';
import type { LimitRoom } from '../../film/limits/limit.ts';
import { recorded, recordedOrNull } from '../recorded.ts';

/** Two digits, so that a sum adds up as it is printed. */
const b = (thickness: number) => bare(thickness, 2);
const u = (thickness: number) => um(thickness, 2);

/** Nothing of a limit that allows nothing whatever the film. */
export function limitSteps({ limit, byWord, steps }: LimitWhy): readonly Sentence[] {
  if (steps === null || byWord === null || limit.room === undefined) return [];
  const certain = says`if its word held for certain it would be ${u(byWord)}:`;
  return [
    ...(Math.abs(byWord - limit.value) < LEAST_TOLD ? [] : [certain]),
    ...stepsByWord(byWord, limit.room, steps),
  ];
}

function stepsByWord(
  byWord: Micrometres,
  limitRoom: LimitRoom,
  steps: AllowanceSteps,
): readonly Sentence[] {
  const { room } = steps;
  const risk = `${shown(100 * limitRoom.risk, 1)} %`;
  const { of, less } = limitRoom;
  if (room <= 0) {
    return [says`${b(of)} − ${u(less)} leaves no room, even before anything is taken`];
  }
  const left = says`room ${b(of)} − ${b(less)} = ${b(room)}`;
  if (steps.kind === 'exact') {
    return [
      says`${left}${nextFact}a removal may turn out ${shown(steps.factor, 3)} times its middle (${risk} chance of more): ${b(room)} ÷ ${shown(steps.factor, 3)} = ${u(byWord)}`,
    ];
  }
  if (byWord === 0) {
    return [says`${left} ± ${u(steps.roomSd)}: over ${risk} chance that it is gone already`];
  }
  return [
    says`${left}, uncertain by ± ${u(steps.roomSd)} (SD)`,
    ...uncertainSteps(byWord, steps, risk),
  ];
}

function uncertainSteps(
  median: Micrometres,
  steps: Extract<AllowanceSteps, { kind: 'uncertain' }>,
  risk: string,
): readonly Sentence[] {
  const { room, removalMean, removalSd, togetherSd, sds } = steps;
  return [
    says`a removal whose middle is ${b(median)} takes ${b(removalMean)} ± ${u(removalSd)} (mean ± SD)${nextFact}both together ± ${u(togetherSd)}`,
    says`${b(removalMean)} for the removal + ${shown(sds, 3)} × ${b(togetherSd)} for the doubt = ${u(room)}, all of the room${nextFact}${shown(sds, 3)} SDs leave ${risk} risk`,
  ];
}

/** A limit's steps in the record. */
export const limitStepsRecord = ({ limit, byWord, steps }: LimitWhy) => ({
  code: limit.code,
  allows_um: recorded(limit.value),
  by_word_um: recordedOrNull(byWord),
  room_um: steps === null ? null : recorded(steps.room),
  room_sd_um: steps === null ? null : recorded(steps.kind === 'exact' ? 0 : steps.roomSd),
  limit_risk_prob: limit.room === undefined ? null : recorded(limit.room.risk),
  removal_factor: steps?.kind === 'exact' ? recorded(steps.factor) : null,
  removal_mean_um: steps?.kind === 'uncertain' ? recorded(steps.removalMean) : null,
  removal_sd_um: steps?.kind === 'uncertain' ? recorded(steps.removalSd) : null,
  together_sd_um: steps?.kind === 'uncertain' ? recorded(steps.togetherSd) : null,
  sds: steps?.kind === 'uncertain' ? recorded(steps.sds) : null,
});
