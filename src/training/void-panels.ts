/**
 * Panels whose readings a blunder voids, and what that costs. Values that were made up beyond reasonable doubt count as
 * not read: neither their points nor a low spot or a repair among them, and what was there is missed by whoever wrote
 * that the panel was read. Readings that a slip spoils (another unit, a decimal mark, panels swapped) were read, and
 * count as no more than the model says of a satisfactory panel: whoever works by the sheet meets another film there.
 */
import type { Panel } from '../film/template/template.ts';
import { type GradedSurvey, readPanels } from './graded-survey.ts';
import type { PanelScore } from './panel-score.ts';
import { isSlip, type Reason } from './reasons.ts';

export type VoidPanel = { readonly panel: Panel; readonly as: 'unread' | 'wrong' };

/** `madeUp` holds ids of panels; a slip that names no panel is one of the whole survey. */
export function voidPanels(
  trainee: GradedSurvey,
  blunders: readonly Reason[],
  madeUp: ReadonlySet<string>,
): readonly VoidPanel[] {
  const slips = blunders.filter(isSlip);
  const all = slips.some(({ panels }) => panels.length === 0);
  const slipped = new Set(slips.flatMap(({ panels }) => panels));
  return readPanels(trainee).flatMap(({ panel }): readonly VoidPanel[] => {
    if (madeUp.has(panel.id)) return [{ panel, as: 'unread' }];
    return all || slipped.has(panel.id) ? [{ panel, as: 'wrong' }] : [];
  });
}

/** The survey as if the panels that count as not read had not been handed in. */
export function asFarAsRead(trainee: GradedSurvey, voided: readonly VoidPanel[]): GradedSurvey {
  const unread = new Set(voided.flatMap(({ panel, as }) => (as === 'unread' ? [panel.id] : [])));
  if (unread.size === 0) return trainee;
  return {
    ...trainee,
    survey: {
      ...trainee.survey,
      panels: trainee.survey.panels.filter(({ panel }) => !unread.has(panel.id)),
    },
    readings: trainee.readings.filter(({ panel }) => !unread.has(panel)),
  };
}

/** The most that the score of a panel counts in the mark. */
export const mostOf =
  (voided: readonly VoidPanel[], slippedShare: number) =>
  ({ panel }: Pick<PanelScore, 'panel'>): number => {
    const found = voided.find((one) => one.panel.id === panel.id);
    if (found === undefined) return 1;
    return found.as === 'unread' ? 0 : slippedShare;
  };
