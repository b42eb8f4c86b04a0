/**
 * Panels whose readings a blunder voids, and what that costs. Values that were made up beyond reasonable doubt count as
 * not read: neither their points nor a low spot or a repair among them, and what was there is missed by whoever wrote
 * that the panel was read. Readings that a slip spoils (another unit, a decimal mark, panels swapped) were read, and
 * count as no more than the model says of a satisfactory panel: whoever works by the sheet meets another film there. Of a
 * panel whose points are numbered from the other end, or in another order, the mean, the condition and what is low are right, and only the
 * places are not: it counts as one to be read again, and what is low on it as found (src/training/turned-points.ts).
 */
import type { Panel } from '../film/template/template.ts';
import { type GradedSurvey, pointKey, readPanels } from './graded-survey.ts';
import type { PanelScore } from './panel-score.ts';
import { isTurned, type Reason, spoilsReadings } from './reasons.ts';
import type { TrainingModel } from './training-model.ts';

export type VoidPanel = { readonly panel: Panel; readonly as: 'unread' | 'wrong' | 'turned' };

/** `madeUp` holds ids of panels; a slip that names no panel is one of the whole survey. */
export function voidPanels(
  trainee: GradedSurvey,
  blunders: readonly Reason[],
  madeUp: ReadonlySet<string>,
): readonly VoidPanel[] {
  const slips = blunders.filter(spoilsReadings);
  const all = slips.some(({ panels }) => panels.length === 0);
  const panelsOf = (some: readonly Reason[]) => new Set(some.flatMap(({ panels }) => panels));
  const [slipped, turned] = [panelsOf(slips), panelsOf(blunders.filter(isTurned))];
  return readPanels(trainee).flatMap(({ panel }): readonly VoidPanel[] => {
    if (madeUp.has(panel.id)) return [{ panel, as: 'unread' }];
    if (all || slipped.has(panel.id)) return [{ panel, as: 'wrong' }];
    return turned.has(panel.id) ? [{ panel, as: 'turned' }] : [];
  });
}

/**
 * The survey as if the panels that count as not read, and the points by `pointKey` whose reading is in another unit or has
 * its decimal mark in the wrong place, had not been handed in: such a reading can no more be used as it stands than one
 * that the reader leaves out (112+, or more than a gauge shows). Panels swapped hold readings that can.
 */
export function asFarAsRead(
  trainee: GradedSurvey,
  voided: readonly VoidPanel[],
  keyed: ReadonlySet<string> = new Set(),
): GradedSurvey {
  const unread = new Set(voided.flatMap(({ panel, as }) => (as === 'unread' ? [panel.id] : [])));
  if (unread.size + keyed.size === 0) return trainee;
  const isRead = (panel: string, point: string): boolean =>
    !unread.has(panel) && !keyed.has(pointKey(panel, point));
  const panels = trainee.survey.panels.map((one) => ({
    ...one,
    points: one.points.filter(({ point }) => isRead(one.panel.id, point)),
  }));
  return {
    ...trainee,
    survey: { ...trainee.survey, panels: panels.filter(({ points }) => points.length > 0) },
    readings: trainee.readings.filter(({ panel, point }) => isRead(panel, point)),
  };
}

type Shares = Pick<TrainingModel['scores'], 'slippedShare' | 'questionableShare'>;

/** The most that the score of a panel counts in the mark. */
export function mostOf(voided: readonly VoidPanel[], { slippedShare, questionableShare }: Shares) {
  const most = { unread: 0, wrong: slippedShare, turned: questionableShare };
  const as = new Map(voided.map((one) => [one.panel.id, one.as]));
  return ({ panel }: Pick<PanelScore, 'panel'>): number => {
    const found = as.get(panel.id);
    return found === undefined ? 1 : most[found];
  };
}
