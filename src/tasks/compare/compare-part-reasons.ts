/** Why the word on a compared panel is what it is. */
import { shownFile } from '../../base/file-name.ts';
import { type Remark, remark } from '../../base/remark.ts';
import { says, um } from '../../base/sentence.ts';
import type { PanelComparison } from '../../film/compare/panel-comparison.ts';
import { keyingQuestion } from '../../film/condition/keying-slips.ts';
import type { Allowance } from '../../film/limits/allowance.ts';
import { swapText } from './compare-swaps.ts';
import type { OneMoreSet, Rise } from './part-left.ts';

export const riseReasons = (rise: Rise | null): readonly Remark[] =>
  rise === null
    ? []
    : [
        remark(
          'film-rose',
          says`reads ${um(rise.by)} more in ${shownFile(rise.to)} than in ${shownFile(rise.from)}, the visit before: ${rise.paint !== null ? 'painted since, or ' : ''}in another order, or read elsewhere, or the gauge moved`,
          rise.by,
        ),
      ];

export function reasonsFor(
  { change, gained, paint, by, slips, swap, panel }: PanelComparison,
  left: Allowance | null,
  oneMore: OneMoreSet | null,
): readonly Remark[] {
  if (change === null) {
    if (slips.length > 0) return slips.map(keyingQuestion);
    return swap === null
      ? [remark('not-compared', 'no points to compare by')]
      : [remark('points-swapped', swapText(swap, panel))];
  }
  return [
    ...(gained
      ? [
          remark(
            'film-gained',
            says`reads ${um(-change.removed.value)} more than before: ${paint !== null ? 'painted since, or ' : ''}the gauge moved, wax or coating lies on it, or other places were read`,
            -change.removed.value,
          ),
        ]
      : []),
    ...(!gained && !change.resolved
      ? [
          remark(
            'change-not-resolved',
            says`a change under ${um(change.detectable.surely)} may go unseen here: ${by === 'pairs' ? 'more marked points would show it' : 'points marked before the work would show it'}`,
            change.detectable.surely,
          ),
        ]
      : []),
    ...(left === null || oneMore === null
      ? []
      : [
          remark(
            'one-more-set',
            says`${setSaid(oneMore)} takes ${um(oneMore.removal.median, 2)} in the middle, ${um(left.budget, 2)} may go`,
            left.budget,
          ),
          left.boundBy,
        ]),
  ];
}

/** Of a panel that no plan works it is only a measure of what is left. */
const setSaid = ({ combination, from }: OneMoreSet): string =>
  from === 'plan'
    ? `one more set of ${combination}`
    : `no plan works it, and a set of the mildest combination, ${combination},`;
