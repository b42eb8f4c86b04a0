/** A car before its panels are judged: what was read on each, and what they say of one another. */
import { groupBy } from '../base/group-by.ts';
import { keptWith } from '../base/kept.ts';
import { type CarContext, carContext } from './car-context.ts';
import type { OverRange } from './condition/over-range.ts';
import { type GatheredPanel, gatherPanel } from './gathered-panel.ts';
import type { Reading } from './reading.ts';
import type { SurveyRequest } from './survey-request.ts';

export type GatheredCar = {
  /** In the order of the template. */
  readonly panels: readonly GatheredPanel[];
  /** Panels of the readings that make the baseline, where those are others. */
  readonly otherMakers: readonly GatheredPanel[] | null;
  readonly context: CarContext;
};

/** Kept: a survey asks for it, and then what would help. */
export const gatherCar = keptWith((request: SurveyRequest): GatheredCar => {
  const panels = gatherPanels(request.readings, request);
  const { baselineReadings } = request;
  const otherMakers =
    baselineReadings === undefined
      ? null
      : gatherPanels(baselineReadings, { ...request, overRange: [] });
  return seenTogether(panels, otherMakers, request);
});

/** The same car with other readings on one panel. */
export function withReadingsOf(
  { panels, otherMakers }: Pick<GatheredCar, 'panels' | 'otherMakers'>,
  panelId: string,
  readings: readonly Reading[],
  request: SurveyRequest,
): GatheredCar {
  const changed = panels.map((one) =>
    one.panel.id === panelId
      ? gatherPanel(one.panel, request.factsOf(panelId), readings, overRangeOn(request, panelId))
      : one,
  );
  return seenTogether(changed, otherMakers, request);
}

const seenTogether = (
  panels: readonly GatheredPanel[],
  otherMakers: readonly GatheredPanel[] | null,
  { model }: SurveyRequest,
): GatheredCar => ({
  panels,
  otherMakers,
  context: carContext(panels, otherMakers ?? panels, model),
});

/** In the order of the template. */
export function gatherPanels(
  readings: readonly Reading[],
  request: Pick<SurveyRequest, 'template' | 'factsOf' | 'overRange'>,
): readonly GatheredPanel[] {
  const { template, factsOf } = request;
  const byPanel = groupBy(readings, ({ panel }) => panel);
  return template.panels.map((panel) =>
    gatherPanel(
      panel,
      factsOf(panel.id),
      byPanel.get(panel.id) ?? [],
      overRangeOn(request, panel.id),
    ),
  );
}

const overRangeOn = (
  { overRange = [] }: Pick<SurveyRequest, 'overRange'>,
  panelId: string,
): readonly OverRange[] => overRange.filter(({ panel }) => panel === panelId);
