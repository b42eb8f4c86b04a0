/** Quotes of a batch that have no price, and what a shop file would have to say: told once at the end. */

import { counted } from '../../base/counted.ts';
import { list } from '../../report/batch/record-paths.ts';
import type { MachineRecord } from '../../report/model.ts';

export type UnpricedQuotes = {
  /** Takes the record of a job as a line of ndjson. */
  readonly add: (line: string) => void;
  /** None where every quote has its price. */
  readonly told: () => readonly string[];
};

/** As a record of a quote writes it; a batch of ten thousand is not parsed for it. */
const MISSING = '"missing_keys":["';

export function createUnpriced(): UnpricedQuotes {
  const keys = new Set<string>();
  let count = 0;
  return {
    add: (line) => {
      if (!line.includes(MISSING)) return;
      count += 1;
      const { result } = JSON.parse(line) as { readonly result: MachineRecord };
      for (const key of list(result, 'missing_keys')) keys.add(String(key));
    },
    told: () =>
      count === 0
        ? []
        : [
            `${counted(count, 'quote')} without a price: the shop file (--shop) does not say ${[...keys].join(', ')}; no price is made up`,
          ],
  };
}
