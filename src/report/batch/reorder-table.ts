/** A reorder list for a spreadsheet: a row for each material, for the towels to wash, for each aim, for each job left out. */
import type { Reorder } from '../../work/reorder.ts';
import type { DataCell, DataTable } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import type { JobsAtAim, LeftOut, ReorderLine, ReorderList } from './reorder-list.ts';

const columns = [
  'status',
  'id',
  'material',
  'unit',
  'quantity',
  'used_up',
  'stock',
  'pack',
  'to_buy',
  'price_minor',
  'cost_minor',
  'currency',
  'jobs',
  'shop',
] as const;

type Row = Partial<Readonly<Record<(typeof columns)[number], DataCell>>>;

export const reorderTable = ({
  lines,
  byAim,
  towelLoads,
  towelJobs,
  leftOut,
}: ReorderList): DataTable => ({
  columns,
  rows: [
    ...lines.map(lineRow),
    ...(towelLoads === 0 ? [] : [loadsRow(towelLoads, towelJobs)]),
    ...[...byAim].map(aimRow),
    ...leftOut.map(leftOutRow),
  ].map((row) => columns.map((name) => row[name] ?? null)),
});

function lineRow(line: ReorderLine): Row {
  const { id, material, unit, needed, usedUp, listed, toBuy, currency, jobs, shop } = line;
  return {
    status: statusOf(line),
    ...{ id, material, unit, jobs, shop },
    quantity: recorded(needed),
    used_up: recorded(usedUp),
    stock: recordedOrNull(listed?.stock ?? null),
    pack: listed?.pack ?? null,
    to_buy: toBuy,
    price_minor: listed?.price ?? null,
    cost_minor: costOf(line),
    currency: listed === null ? null : currency,
  };
}

const statusOf = ({ listed, toBuy }: Reorder): string => {
  if (listed === null) return 'not-on-price-list';
  if (toBuy === null) return 'no-stock-given';
  return toBuy > 0 ? 'buy' : 'in-stock';
};

/** Without tax; null where nobody knows how many packs. */
export const costOf = ({ listed, toBuy }: Reorder): number | null =>
  listed === null || toBuy === null ? null : toBuy * listed.price;

const loadsRow = (loads: number, jobs: number): Row => ({
  status: 'wash',
  id: 'towel-loads',
  material: 'loads of towels to wash',
  unit: 'loads',
  quantity: loads,
  jobs,
});

const aimRow = ([aim, { jobs }]: readonly [string, JobsAtAim]): Row => ({
  status: 'counted-at',
  id: aim,
  material: 'the aim that jobs are counted at',
  jobs,
});

const leftOutRow = ({ job, status }: LeftOut): Row => ({
  status: 'job-left-out',
  id: job,
  material: `not in this list: the job is ${status}`,
});
