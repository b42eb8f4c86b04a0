/**
 * What two operators, or two rounds in files of their own, read apart on points that both read: pooled, their readings
 * would count as repeats of one, and the mean would seem as sure as if one had read it all.
 *
 * By the rule of `same-round.ts`, its chance shared among the pairs of operators. Who of two reads right, the
 * readings do not say: either is one draw from all who might read the car, s_L² = (d² − u_d²)/2 (ISO 5725-2, the
 * variance between laboratories of two). It is counted whole: a panel may be one operator's alone, and with two
 * it averages down little.
 */
import { groupBy } from '../base/group-by.ts';
import { differenceInterval } from '../base/stats/mean-difference.ts';
import { mean } from '../base/stats/summary.ts';
import { type Micrometres, micrometres } from '../base/units.ts';
import type { Reading } from './reading.ts';
import { type RoundRule, roundDifference, roundsDiffer } from './same-round.ts';

export type OperatorsApart = {
  readonly lower: string;
  readonly higher: string;
  /** Above 0, and half the interval that holds it 19 times in 20. */
  readonly difference: Micrometres;
  readonly expanded: Micrometres;
  readonly points: number;
  /** SD of one operator's readings about what all would read. */
  readonly sd: Micrometres;
  /** The first of the higher that both read. */
  readonly example: Reading;
};

/** The two furthest apart of those that differ; a reading of nobody known is left out. */
export function operatorsApart(
  readings: readonly Reading[],
  operatorOf: (reading: Reading) => string | undefined,
  rule: RoundRule,
): OperatorsApart | undefined {
  const operators = [...groupBy(readings, operatorOf)].flatMap(([name, own]) =>
    name === undefined ? [] : [{ name, own }],
  );
  const pairs = operators.flatMap(({ name: second, own }, i) =>
    operators.slice(0, i).map((other) => ({ first: other.name, before: other.own, second, own })),
  );
  return pairs
    .flatMap((pair) => apart(pair, rule, pairs.length) ?? [])
    .reduce<OperatorsApart | undefined>(
      (most, one) => (most === undefined || one.difference > most.difference ? one : most),
      undefined,
    );
}

type OperatorPair = {
  readonly first: string;
  readonly before: readonly Reading[];
  readonly second: string;
  readonly own: readonly Reading[];
};

function apart(
  { first, before, second, own }: OperatorPair,
  rule: RoundRule,
  among: number,
): OperatorsApart | undefined {
  const ofFirst = groupBy(before, pointKey);
  const shared = [...groupBy(own, pointKey)].flatMap(([key, later]) => {
    const earlier = ofFirst.get(key);
    return earlier === undefined ? [] : [{ earlier, later }];
  });
  const [example] = shared;
  if (example === undefined || shared.length < LEAST_SHARED) return undefined;
  const of = roundDifference(
    shared.map(({ earlier, later }) => meanOf(later) - meanOf(earlier)),
    rule,
  );
  if (!roundsDiffer(of, rule, among)) return undefined;
  const { difference, standardError } = of;
  const [low, high] = differenceInterval(of, 0.95);
  return {
    ...(difference > 0 ? { lower: first, higher: second } : { lower: second, higher: first }),
    difference: micrometres(Math.abs(difference)),
    expanded: micrometres((high - low) / 2),
    points: shared.length,
    sd: micrometres(Math.sqrt(Math.max(0, difference ** 2 - standardError ** 2) / 2)),
    example: (difference > 0 ? example.later : example.earlier)[0],
  };
}
/** One point may be a slip of either. */
const LEAST_SHARED = 2;

const meanOf = (readings: readonly Reading[]): number =>
  mean(readings.map(({ thickness }) => thickness));

const pointKey = ({ panel, point, layer, place }: Reading): string =>
  [panel, point, layer, place].join('\0');
