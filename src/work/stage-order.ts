/** Which stages a job has and in which order, and what is wrong with an order of one's own. */

import { groupBy } from '../base/group-by.ts';
import { STAGES } from '../correction/removal/catalogue.ts';
import { isAsked, type JobScope } from './job-scope.ts';
import type { JobStage, WorkModel } from './work-model.ts';

type Ordering = Pick<WorkModel, 'stages' | 'rules' | 'pairs'>;

/** The stages that are done, in order: the scope's own order, else the usual one of what it asks for. */
export function orderedStages(
  scope: JobScope,
  { stages }: Pick<WorkModel, 'stages'>,
): readonly JobStage[] {
  const { order } = scope;
  if (order === null) return stages.filter(({ needs }) => isAsked(needs, scope));
  return order.flatMap((id) => stages.filter((stage) => stage.id === id));
}

/** A place in an order at which it goes wrong. */
export type OrderFault = {
  readonly index: number;
  readonly message: string;
  readonly hint: string;
};

/** What is wrong with the order of these stages, by the stage that stands where it may not. */
export function orderFaults(
  order: readonly string[],
  { rules, pairs }: Pick<Ordering, 'rules' | 'pairs'>,
): readonly OrderFault[] {
  const placeOf = (id: string): number => order.indexOf(id);
  const twice = order.flatMap((id, index) =>
    placeOf(id) === index
      ? []
      : [{ index, message: `"${id}" stands in the order twice`, hint: 'keep one of them' }],
  );
  const early = earlyFaults(order, rules, placeOf);
  const lonely = pairs
    .filter((pair) => placeOf(pair.stage) !== -1 && placeOf(pair.with) === -1)
    .map((pair) => ({
      index: placeOf(pair.stage),
      message: `"${pair.stage}" is done and "${pair.with}" is not: ${pair.reason}`,
      hint: `add "${pair.with}" where it belongs`,
    }));
  return [...twice, ...early, ...lonely].sort((a, b) => a.index - b.index);
}

/** Stages of polishing that an order leaves out: whether anything is done in one is for the plan to say. */
export const unsaidPolishing = (order: readonly string[]): readonly OrderFault[] =>
  STAGES.filter((stage) => !order.includes(stage)).map((stage) => ({
    index: 0,
    message: `"${stage}" is not in the order: the plan decides whether anything is done in it`,
    hint: `add "${stage}" where it belongs`,
  }));

/** Each stage that stands before one that must come first; `endOf` is where a stage is over. */
export function earlyFaults(
  order: readonly string[],
  rules: Ordering['rules'],
  endOf: (id: string) => number,
): readonly OrderFault[] {
  const early = rules.flatMap(({ before, after, reason }) =>
    before.flatMap((first) =>
      after
        .filter((later) => order.includes(later) && order.indexOf(later) < endOf(first))
        .map((later) => ({ first, later, reason })),
    ),
  );
  return [...groupBy(early, ({ later }) => later).values()].map((faults) => {
    // Behind the one that is over last it is behind them all.
    const { first, later, reason } = faults.reduce((a, b) =>
      endOf(b.first) > endOf(a.first) ? b : a,
    );
    return {
      index: order.indexOf(later),
      message: `"${later}" stands before "${first}": ${reason}`,
      hint: `put "${later}" after "${first}"`,
    };
  });
}
