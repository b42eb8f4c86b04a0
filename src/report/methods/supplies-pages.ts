/** Whatever a job may use up, as a page and as a record: the ids by which a price list names it. */
import { counted } from '../../base/counted.ts';
import { figure } from '../../base/rounding.ts';
import type { Supply, SupplyUse } from '../../work/supplies.ts';
import { column } from '../columns.ts';
import { envelope, type RecordContext } from '../envelope.ts';
import { type Block, cell, gap, type MachineRecord, paragraph, title } from '../model.ts';
import { recorded } from '../recorded.ts';

export const suppliesBlocks = (supplies: readonly Supply[]): readonly Block[] => [
  title(`Materials: ${supplies.length} that a job may use up`),
  {
    kind: 'table',
    columns: [column('material'), column('what it is'), column('amount')],
    rows: supplies.map((supply) => [
      cell(supply.id),
      cell(supply.material),
      cell(supply.uses.map((use) => useText(use, supply.unit)).join(', ')),
    ]),
  },
  gap,
  paragraph(
    null,
    'A price list names a material by its id and counts it as here: { "id": "wax", "pack": 250, "unit": "ml", "price_minor": 2600, "stock": 180 }, or "unit": "pieces", or "m".',
  ),
  paragraph(
    null,
    'Pads go by their diameter. The amounts are numbers of a shop file: leastcut explain work.materials.',
  ),
];

const FOR: Readonly<Record<Exclude<SupplyUse['per'], 'section'>, string>> = {
  job: 'a job',
  wheels: 'a wheel',
  'vehicle-area': 'a m² of the vehicle',
  'worked-area': 'a m² worked',
  'worked-trim': 'a metre of trim',
  'set-area': 'a m² of a set',
  'fresh-pad': 'a fresh pad',
};

/** What many sections share is told by how many they are. */
function useText({ quantity, per }: SupplyUse, unit: Supply['unit']): string {
  if (per === 'section') return `1 piece for ${counted(Math.round(1 / quantity), 'section')}`;
  if (unit === 'pieces' && quantity < 1) return `1 piece for ${figure(1 / quantity)} jobs`;
  return `${figure(quantity)}${unit === 'pieces' ? '' : `\u00a0${unit}`} ${FOR[per]}`;
}

export const usedBy = ({ stages }: Supply): readonly string[] =>
  stages.length === 0 ? ['polishing'] : stages;

export const suppliesRecord = (
  supplies: readonly Supply[],
  context: RecordContext,
): MachineRecord => ({
  ...envelope('methods', { vehicle: null, inputs: [], assumptions: [] }, context),
  materials: supplies.map((supply) => ({
    ...{ id: supply.id, material: supply.material, unit: supply.unit },
    uses: supply.uses.map(({ quantity, per }) => ({ quantity: recorded(quantity), per })),
    used_by: usedBy(supply),
  })),
});
