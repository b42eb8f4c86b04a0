/** A reorder list in a few lines, for whoever ran the batch. */

import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { sum } from '../../base/sum.ts';
import { moneyText } from '../quote/money-text.ts';
import type { LeftOut, ReorderLine, ReorderList } from './reorder-list.ts';
import { costOf } from './reorder-table.ts';

export const reorderWords = (list: ReorderList): readonly string[] => [
  buyText(list),
  ...uncountedText(list.lines),
  ...aimsText(list),
  ...leftOutText(list.leftOut),
];

/** A quote has several aims, and each of them uses other amounts. */
function aimsText({ byAim }: ReorderList): readonly string[] {
  const parts = [...byAim].map(([aim, { jobs, unsaid }]) => {
    const why =
      unsaid === 0 ? '' : unsaid === jobs ? ' (no aim said)' : ` (${unsaid}: no aim said)`;
    return `${counted(jobs, 'job')} at "${aim}"${why}`;
  });
  return parts.length === 0
    ? []
    : [
        `amounts are those of one aim of each job: ${parts.join(', ')}; --aim counts all at another`,
      ];
}

/** `to buy for 3 jobs: 5 packs of 2 materials, 74.10 GBP without tax; 5 loads of towels`. */
function buyText({ lines, jobs, towelLoads }: ReorderList): string {
  const bought = lines.filter(({ toBuy }) => toBuy !== null && toBuy > 0);
  const packs = sum(bought.map(({ toBuy }) => toBuy ?? 0));
  const what =
    packs === 0
      ? 'nothing'
      : [
          `${counted(packs, 'pack')} of ${counted(materialsOf(bought), 'material')}`,
          ...costTexts(bought),
        ].join(', ');
  const towels = towelLoads === 0 ? '' : `; ${counted(towelLoads, 'load')} of towels`;
  return `to buy for ${counted(jobs, 'job')}: ${what}${towels}`;
}

/** A sum for each currency. */
const costTexts = (bought: readonly ReorderLine[]): readonly string[] =>
  [...groupBy(bought, ({ currency }) => currency)].flatMap(([code, own]) => {
    if (code === null) return [];
    const digits = own[0].currencyDigits ?? 0;
    const cost = sum(own.map((line) => costOf(line) ?? 0));
    return [`${moneyText(BigInt(cost), { code, digits })} without tax`];
  });

/** Several shops may list the same. */
const materialsOf = (lines: readonly ReorderLine[]): number =>
  new Set(lines.map(({ id }) => id)).size;

function uncountedText(lines: readonly ReorderLine[]): readonly string[] {
  const unlisted = materialsOf(lines.filter(({ listed }) => listed === null));
  const uncounted = materialsOf(
    lines.filter(({ listed }) => listed !== null && listed.stock === null),
  );
  return [
    ...(unlisted === 0 ? [] : [`${counted(unlisted, 'material')} not on the price list`]),
    ...(uncounted === 0 ? [] : [`${counted(uncounted, 'material')} without a stock`]),
  ];
}

/** Names that are told; the rest stand in the list itself. */
const MOST_NAMED = 5;

function leftOutText(leftOut: readonly LeftOut[]): readonly string[] {
  if (leftOut.length === 0) return [];
  const named = leftOut.slice(0, MOST_NAMED).map(({ job }) => JSON.stringify(job));
  const more = leftOut.length - named.length;
  const rest = more === 0 ? '' : ` and ${more} more`;
  return [`not in the list to buy: ${named.join(', ')}${rest}`];
}
