/** What was read on each panel of a car and nothing that is judged of it: the figures that every survey begins with. */
import { mayBeInZones } from './car-context.ts';
import { gatherCar, gatherPanels } from './gathered-car.ts';
import { type GatheredPanel, partOfPanel } from './gathered-panel.ts';
import type { PanelSurvey, ZoneName } from './survey.ts';
import type { SurveyRequest } from './survey-request.ts';

/** A panel, or one zone of it, as far as its readings alone say. */
export type MeasuredPart = Pick<PanelSurvey, 'panel' | 'points' | 'readingCount' | 'statistics'> & {
  readonly zone?: ZoneName;
};

export type MeasuredPanel = MeasuredPart & {
  /** Two where a survey has two. */
  readonly zones: readonly MeasuredPart[];
};

/** All panels of the template in walking order, read or not. */
export function measuredPanels(request: SurveyRequest): readonly MeasuredPanel[] {
  const panels = gatherPanels(request.readings, request);
  const { model } = request;
  // Only then must be known what the panels say of one another.
  if (!panels.some((panel) => mayBeInZones(panel, model))) return panels.map(inOneZone);
  const { zones } = gatherCar(request).context;
  return panels.map((whole) => {
    const own = zones.get(whole.panel.id);
    if (own === undefined) return inOneZone(whole);
    const zoneOf = (zone: ZoneName): MeasuredPart => ({ ...partOfPanel(whole, own[zone]), zone });
    return { ...inOneZone(whole), zones: [zoneOf('thinner'), zoneOf('thicker')] };
  });
}

const inOneZone = ({ panel, points, readingCount, statistics }: GatheredPanel): MeasuredPanel => ({
  panel,
  points,
  readingCount,
  statistics,
  zones: NO_ZONES,
});

const NO_ZONES: MeasuredPanel['zones'] = [];

/** A panel, or in place of one in two zones its zones. */
export const measuredParts = (panel: MeasuredPanel): readonly MeasuredPart[] =>
  panel.zones.length === 0 ? [panel] : panel.zones;
