import { type Remark, remark } from '../../base/remark.ts';
import { type Condition, needsUltrasound } from '../condition/condition.ts';
import type { PanelFacts } from '../film-model.ts';
import type { PanelPoint } from '../panel-points.ts';
import type { Panel } from '../template/template.ts';

/** Something to do, with the further points to read where it is that. */
export type SurveyAdvice = Remark & { readonly points?: number };

/** What would make a panel's survey surer. More than nine points gain next to nothing. */
export function surveyAdvice(
  { panel, points }: { readonly panel: Panel; readonly points: readonly PanelPoint[] },
  condition: Condition,
  facts: PanelFacts,
  bestPoints: number,
): readonly SurveyAdvice[] {
  if (condition === 'unread') {
    return needsUltrasound(panel)
      ? [
          // A gauge that needs metal hardly ever shows anything where there is none.
          ...(points.length > 0
            ? [remark('substrate', 'metal after all? State its substrate in the job')]
            : []),
          remark('ultrasound', `${panel.substrate}: ultrasonic gauge or leave it`),
        ]
      : [remark('read', `read ${panel.points.length} points on the face`)];
  }
  const advice: SurveyAdvice[] = [];
  if (facts.finish === 'matte' || facts.covered) return [];
  if (points.length < bestPoints) {
    const more = bestPoints - points.length;
    const why = points.length === 1 ? ', one is no basis for machine work' : '';
    const text = `read ${more} more point${more === 1 ? '' : 's'} a panel${why}`;
    advice.push({ ...remark('more-points', text), points: more });
  }
  if (facts.taken === null) {
    advice.push(remark('history', 'find out what was polished off before'));
  }
  if (condition === 'filler' || condition === 'mixed' || condition === 'refinished') {
    advice.push(remark('repair-edge', 'find the edge of the repair with closer points'));
  }
  return advice;
}
