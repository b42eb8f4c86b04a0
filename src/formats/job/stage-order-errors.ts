/** Stages in a file, held against the rules of the trade about what must come before what. */
import { type Diagnostic, error } from '../../base/diagnostics.ts';
import { type OrderFault, orderFaults } from '../../work/stage-order.ts';
import { stagePairs, stageRules } from '../data/stage-rules.ts';
import type { Placed } from '../json/placed.ts';

type Place = ReturnType<Placed<unknown>['placeOf']>;

/** `placeAt` is where the stage of an index stands in the file; `besides` is what else is wrong. */
export const stageOrderErrors = (
  order: readonly string[],
  placeAt: (index: number) => Place,
  besides: readonly OrderFault[] = [],
): readonly Diagnostic[] =>
  [...orderFaults(order, { rules: stageRules, pairs: stagePairs }), ...besides]
    .sort((one, other) => one.index - other.index)
    .map(({ index, message, hint }) => error('stage-order', message, { at: placeAt(index), hint }));
