/** Quotes of a batch that have no price, and what a shop file would have to say: told once at the end. */

import { counted } from '../../base/counted.ts';
import type { AboutJob } from './about-job.ts';

export type UnpricedQuotes = {
  readonly add: (job: Pick<AboutJob, 'missingKeys'>) => void;
  /** None where every quote has its price. */
  readonly told: () => readonly string[];
};

export function createUnpriced(): UnpricedQuotes {
  const keys = new Set<string>();
  let count = 0;
  return {
    add: ({ missingKeys }) => {
      if (missingKeys.length === 0) return;
      count += 1;
      for (const key of missingKeys) keys.add(key);
    },
    told: () =>
      count === 0
        ? []
        : [
            `${counted(count, 'quote')} without a price: the shop file (--shop) does not say ${[...keys].join(', ')}; no price is made up`,
          ],
  };
}
