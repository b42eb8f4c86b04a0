/** Parts that are to be worked by too few points: said before what is done to them. */
import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { isWorked, type PanelPlan } from '../../correction/plan/plan.ts';
import { partName } from '../../film/survey.ts';
import { joined } from '../facts.ts';
import { type Block, notice } from '../model.ts';

/** What a panel’s own line would say again. */
export const isOfReadings = (code: string): boolean => code === 'more-points';

/** `bonnet (only 3 points: read 2 more)`. */
export function readMoreFirst(parts: readonly PanelPlan[]): readonly Block[] {
  const few = parts.filter(isWorked).flatMap(({ survey }) =>
    survey.advice.flatMap(({ code, points }) => {
      const more = isOfReadings(code) ? (points ?? 0) : 0;
      const read = counted(survey.points.length, 'point');
      return more === 0 ? [] : [{ survey, why: `(only ${read}: read ${more} more)` }];
    }),
  );
  const told = [...groupBy(few, ({ why }) => why)].map(
    ([why, some]) => `${some.map(({ survey }) => partName(survey)).join(', ')} ${why}`,
  );
  return told.length === 0 ? [] : [notice('Read more first', joined(told, ' · '))];
}
