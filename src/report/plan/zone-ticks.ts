/** What to do before one of a panel's two zones is worked: where it lies, where it ends, what is taped off. */
import { rangeShown } from '../../base/rounding.ts';
import { thicknessText, unitName } from '../../base/sentence.ts';
import type { LengthUnit } from '../../base/units.ts';
import type { PanelPlan } from '../../correction/plan/plan.ts';
import { isZone, type PanelSurvey, type ZoneSurvey } from '../../film/survey.ts';
import type { PlanResult } from '../../tasks/plan/plan-vehicle.ts';
import type { Block, Face, Tick } from '../model.ts';
import { placesOf, pointsWithPlaces } from '../point-places.ts';

/** Of a whole panel there is nothing to find. */
export function zoneTicks(part: PanelPlan, result: PlanResult, unit: LengthUnit): readonly Tick[] {
  const { survey } = part;
  const panel = panelOf(part, result);
  if (!isZone(survey) || panel === undefined) return [];
  const other = panel.zones.find(({ zone }) => zone !== survey.zone);
  if (other === undefined) return [];
  const { edgeWidth } = result.settings.film;
  return [
    {
      text: `work only about ${wherePoints(survey)}; the ${other.zone} zone lies about ${wherePoints(other)}, ${rangeText(other, unit)}`,
      boxes: 0,
      tone: 'strong',
    },
    {
      text: `find the edge: closer points from ${names(survey)} towards ${names(other)} till the film changes; tape along it, ${edgeWidth}\u00a0mm on this side, and over all beyond. Not found: leave the panel`,
      boxes: 1,
    },
  ];
}

const panelOf = (part: PanelPlan, { plan }: PlanResult): PanelSurvey | undefined =>
  plan.panels.find(({ survey }) => survey.panel.id === part.survey.panel.id)?.survey;

/** `points 1 (front top), 2 (rear top)`. */
export const wherePoints = ({ panel, points }: PanelSurvey): string =>
  `${points.length === 1 ? 'point' : 'points'} ${pointsWithPlaces(panel, points)}`;

const names = ({ points }: PanelSurvey): string => points.map(({ point }) => point).join(', ');

function rangeText({ points }: ZoneSurvey, unit: LengthUnit): string {
  const values = points.map(({ thickness }) => thickness);
  return `${rangeShown(values, (one) => thicknessText(one, unit))}\u00a0${unitName(unit)}`;
}

/** The panels whose zones are worked as they lie: what stands out upwards is the thicker zone. */
export function zoneFaces(
  worked: readonly PanelPlan[],
  result: PlanResult,
  unit: LengthUnit,
): readonly Block[] {
  const panels = worked.flatMap((part) =>
    isZone(part.survey) ? (panelOf(part, result) ?? []) : [],
  );
  const faces = [...new Set(panels)].map((panel) => faceOf(panel, unit));
  return faces.length === 0
    ? []
    : [
        {
          kind: 'faces',
          label: 'Panels in two zones, as you stand before them; high: the thicker zone',
          values: `readings (${unitName(unit)})`,
          faces,
        },
      ];
}

function faceOf({ panel, points, zones }: PanelSurvey, unit: LengthUnit): Face {
  const { places, arrow } = placesOf(panel, points);
  const thicker = zones.find(({ zone }) => zone === 'thicker');
  const isThicker = (name: string): boolean =>
    thicker?.points.some(({ point }) => point === name) ?? false;
  return {
    name: panel.name,
    note: arrow,
    points: points.map(({ point, thickness }, i) => ({
      name: point,
      ...(places[i] ?? { u: 0.5, v: 0.5 }),
      value: thicknessText(thickness, unit),
      sign: isThicker(point) ? 'high' : 'none',
    })),
  };
}
