/**
 * How a limit comes to the median removal that it allows, in figures that can be added up by hand.
 *
 * A limit leaves a room: film over a floor, or what is left of a ceiling, with SD s where that is uncertain. A
 * removal R of median m and ln-SD σ has mean m·e^{σ²/2} and SD m·√(e^{σ²}(e^{σ²} − 1)), and is over
 * m·e^{z·σ} with the chance that z stands for.
 * - s = 0: m = room/e^{z·σ}, z the quantile of 1 − risk.
 * - s > 0: m is the largest for which P(room − R < 0) ≤ risk (see `clearAllowance`). Mean removal and k times the
 *   SD of both together make up the room; k is near z, and over it as removals scatter to the large side.
 */
import { normalQuantile } from '../../base/stats/normal.ts';
import { type Micrometres, micrometres } from '../../base/units.ts';
import { type LimitRoom, roomLeft } from './limit.ts';
import type { RemovalTerms } from './removal-limits.ts';

export type AllowanceSteps =
  /** `factor` times the median is passed with the chance of the risk. */
  | { readonly kind: 'exact'; readonly room: Micrometres; readonly factor: number }
  | {
      readonly kind: 'uncertain';
      readonly room: Micrometres;
      readonly roomSd: Micrometres;
      readonly removalMean: Micrometres;
      readonly removalSd: Micrometres;
      /** SD of room and removal together. */
      readonly togetherSd: Micrometres;
      /** SDs together that lie between the mean removal and the room. */
      readonly sds: number;
    };

/** How many times its median a removal may be, with the chance of the risk. */
export const removalFactor = ({ risk, logSd }: Pick<RemovalTerms, 'risk' | 'logSd'>): number =>
  Math.exp(normalQuantile(1 - risk) * logSd);

export function allowanceSteps(
  limit: LimitRoom,
  median: Micrometres,
  logSd: number,
): AllowanceSteps {
  const { sd, risk } = limit;
  const room = roomLeft(limit);
  if (sd === 0) {
    return { kind: 'exact', room, factor: removalFactor({ risk, logSd }) };
  }
  const spread = Math.exp(logSd ** 2);
  const removalMean = median * Math.sqrt(spread);
  const removalSd = median * Math.sqrt(spread * (spread - 1));
  const togetherSd = Math.hypot(sd, removalSd);
  return {
    kind: 'uncertain',
    room,
    roomSd: sd,
    removalMean: micrometres(removalMean),
    removalSd: micrometres(removalSd),
    togetherSd: micrometres(togetherSd),
    sds: (room - removalMean) / togetherSd,
  };
}
