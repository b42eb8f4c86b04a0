/** What a shop works with, for a spreadsheet: with the keys of the record. */
import type { MethodList, ShownMethod } from '../../tasks/methods/methods.ts';
import type { Supply, SupplyUse } from '../../work/supplies.ts';
import type { DataTable } from '../model.ts';
import { recorded, recordedFigure } from '../recorded.ts';
import { tableOf } from '../table-of.ts';
import { combinationRecord } from './methods-record.ts';
import { usedBy } from './supplies-pages.ts';

/** A row for each combination that serves some stage. */
export const methodListTable = ({ combinations }: MethodList): DataTable =>
  tableOf(
    {
      combination: (one) => one.combination,
      machine: (one) => one.machine,
      pad: (one) => one.pad,
      product: (one) => one.product,
      removal_um_per_set: (one) => one.removal_um_per_set.median,
      removal_um_per_set_low: (one) => one.removal_um_per_set.low,
      removal_um_per_set_high: (one) => one.removal_um_per_set.high,
      basis: (one) => one.basis,
      observations: (one) => one.observations,
      vehicles: (one) => one.vehicles,
      min_per_section: (one) => one.min_per_section,
      min_per_m2: (one) => one.min_per_m2,
      haze: (one) => one.haze,
      stages: (one) => one.stages.join(' '),
    },
    combinations.map(combinationRecord),
  );

/** A row for each number behind it. */
export const shownMethodTable = ({ numbers }: ShownMethod): DataTable =>
  tableOf(
    {
      id: (one) => one.id,
      name: (one) => one.name,
      value: (one) => recordedFigure(one.value),
      unit: (one) => one.unit,
      basis: (one) => one.basis,
      source: (one) => one.source,
      origin: (one) => one.origin,
      where: (one) => one.where,
    },
    numbers,
  );

/** A row for each thing that its amount goes by. */
export const suppliesTable = (supplies: readonly Supply[]): DataTable =>
  tableOf<{ readonly supply: Supply; readonly use: SupplyUse }>(
    {
      id: ({ supply }) => supply.id,
      material: ({ supply }) => supply.material,
      unit: ({ supply }) => supply.unit,
      quantity: ({ use }) => recorded(use.quantity),
      per: ({ use }) => use.per,
      used_by: ({ supply }) => usedBy(supply).join('; '),
    },
    supplies.flatMap((supply) => supply.uses.map((use) => ({ supply, use }))),
  );
