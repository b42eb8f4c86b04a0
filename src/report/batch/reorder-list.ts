/**
 * What to buy for the quotes of a batch: their materials added up record by record, shop by shop, each
 * quote at the aim that its job has. A job without a quote is in the list by its name, as one left out.
 */
import { type Need, type Reorder, reorderOf, together } from '../../work/reorder.ts';
import type { MaterialUnit } from '../../work/work-model.ts';
import type { MachineRecord } from '../model.ts';
import { at, list, numberAt, textAt } from './record-paths.ts';

/** A material of a shop. */
export type ReorderLine = Reorder & {
  /** The file of its prices as the first job of the shop names it; null where there are none. */
  readonly shop: string | null;
  readonly currency: string | null;
  readonly currencyDigits: number | null;
};

export type LeftOut = { readonly job: string; readonly status: string };

/** How many jobs, and those of them of which nobody says at what. */
export type JobsAtAim = { readonly jobs: number; readonly unsaid: number };

export type ReorderList = {
  /** What to buy first, then what nobody counts, then what stock covers. */
  readonly lines: readonly ReorderLine[];
  /** Jobs that are in it. */
  readonly jobs: number;
  /** By the aim they are counted at. */
  readonly byAim: ReadonlyMap<string, JobsAtAim>;
  /** Loads of towels to wash, each job by itself. */
  readonly towelLoads: number;
  /** Jobs that have any. */
  readonly towelJobs: number;
  readonly leftOut: readonly LeftOut[];
};

export type ReorderBook = {
  /** Takes the record of a job, `leastcut/batch/1`. */
  readonly add: (record: MachineRecord) => void;
  readonly list: () => ReorderList;
};

type Entry = Pick<ReorderLine, 'shop' | 'currency' | 'currencyDigits'> & { readonly need: Need };

/** It grows with the materials and with the jobs that are left out, not with those that are done. */
export function createReorderBook(): ReorderBook {
  const entries = new Map<string, Entry>();
  const byAim = new Map<string, JobsAtAim>();
  const leftOut: LeftOut[] = [];
  let jobs = 0;
  let towelJobs = 0;
  let towelLoads = 0;

  const add = (record: MachineRecord): void => {
    const quote = at(record, 'result');
    const aim = textAt(quote, 'aim');
    const option = list(quote, 'options').find((one) => at(one, 'aim') === aim);
    if (aim === null || option === undefined) {
      leftOut.push({ job: textAt(record, 'job') ?? '', status: textAt(record, 'status') ?? '' });
      return;
    }
    jobs += 1;
    const loads = numberAt(option, 'towel_loads') ?? 0;
    towelLoads += loads;
    towelJobs += Number(loads > 0);
    const isSaid = list(quote, 'settings').some(({ name }) => name === 'aim');
    const atAim = byAim.get(aim) ?? { jobs: 0, unsaid: 0 };
    byAim.set(aim, { jobs: atAim.jobs + 1, unsaid: atAim.unsaid + Number(!isSaid) });
    addMaterials(entries, record, option);
  };
  return {
    add,
    list: () => ({
      lines: [...entries.values()]
        .map(({ need, ...about }) => ({ ...about, ...reorderOf(need) }))
        .sort((a, b) => urgency(a) - urgency(b)),
      ...{ jobs, byAim, towelLoads, towelJobs, leftOut },
    }),
  };
}

/** To those of earlier jobs of the same shop. */
function addMaterials(
  entries: Map<string, Entry>,
  record: MachineRecord,
  option: MachineRecord,
): void {
  const quote = at(record, 'result');
  const shop = textAt(quote, 'price_list', 'file');
  const about = {
    shop,
    currency: textAt(quote, 'currency'),
    currencyDigits: numberAt(quote, 'currency_digits'),
  };
  for (const material of list(option, 'materials')) {
    const need = needOf(material);
    const key = JSON.stringify([checksumOf(shop, record), need.id, need.material]);
    const before = entries.get(key);
    entries.set(
      key,
      before === undefined ? { ...about, need } : { ...before, need: together(before.need, need) },
    );
  }
}

/** One shop may be named by several paths: it is known by what its file holds. */
const checksumOf = (shop: string | null, record: MachineRecord): string | null =>
  textAt(
    list(record, 'inputs').find(({ file }) => file === shop),
    'sha256',
  ) ?? shop;

const needOf = (material: MachineRecord): Need => {
  const pack = numberAt(material, 'pack');
  return {
    id: textAt(material, 'id') ?? '',
    material: textAt(material, 'material') ?? '',
    unit: (textAt(material, 'unit') ?? 'pieces') as MaterialUnit,
    lasts: at(material, 'lasts') === true,
    listed:
      pack === null
        ? null
        : {
            pack,
            stock: numberAt(material, 'stock'),
            price: numberAt(material, 'price_minor') ?? 0,
          },
    jobs: 1,
    usedUp: numberAt(material, 'used_up') ?? 0,
    mostReady: numberAt(material, 'quantity') ?? 0,
  };
};

const urgency = ({ toBuy }: Reorder): number => (toBuy === null ? 1 : toBuy > 0 ? 0 : 2);
