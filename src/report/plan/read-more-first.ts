/** Parts that are to be worked by too few points: said before what is done to them. */
import { counted } from '../../base/counted.ts';
import { groupBy } from '../../base/group-by.ts';
import { isWorked, type PanelPlan } from '../../correction/plan/plan.ts';
import { partName } from '../../film/survey.ts';
import { joined } from '../facts.ts';
import { type Block, notice, type Said } from '../model.ts';

/** What a panel’s own line would say again. */
export const isOfReadings = (code: string): boolean => code === 'more-points';

/** Points a panel that the trade reads at least. */
const LEAST_POINTS = 3;

/**
 * `bonnet (only 2 points: read 3 more)`; from three points on that is no bar to the work: `bonnet (3 points do: 2 more
 * may let more go)`.
 */
export function readMoreFirst(parts: readonly PanelPlan[]): readonly Block[] {
  const few = parts.filter(isWorked).flatMap(({ survey }) =>
    survey.advice.flatMap(({ code, points }) => {
      const more = isOfReadings(code) ? (points ?? 0) : 0;
      return more === 0 ? [] : [{ survey, more, isBar: survey.points.length < LEAST_POINTS }];
    }),
  );
  const told = (some: typeof few): Said => {
    const byWhy = groupBy(some, ({ survey, more, isBar }) => {
      const read = counted(survey.points.length, 'point');
      return isBar
        ? `(only ${read}: read ${more} more)`
        : `(${read} do: ${more} more may let more go)`;
    });
    const texts = [...byWhy].map(
      ([why, group]) => `${group.map(({ survey }) => partName(survey)).join(', ')} ${why}`,
    );
    return joined(texts, ' · ');
  };
  const [bar, no] = [few.filter(({ isBar }) => isBar), few.filter(({ isBar }) => !isBar)];
  return [
    ...(bar.length === 0 ? [] : [notice('Read more first', told(bar))]),
    ...(no.length === 0 ? [] : [notice('Few points', told(no))]),
  ];
}
