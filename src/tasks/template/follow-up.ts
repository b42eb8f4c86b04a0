/** What a survey asks to be read next: which panels, how many points further, and where. */
import { counted } from '../../base/counted.ts';
import { type Diagnostic, warning } from '../../base/diagnostics.ts';
import { needsUltrasound } from '../../film/condition/condition.ts';
import { furtherPoints, pointsAboutEdge } from '../../film/help/further-points.ts';
import { pointsInRow } from '../../film/template/point-layout.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import type { Placed } from '../../formats/json/placed.ts';
import type { SurveyedPanel, SurveyFile } from '../../formats/survey-file.ts';

/** A panel with the points that are still to be read on it, and why. */
export type FollowUpPanel = { readonly panel: SheetPanel; readonly why: string };

/** Its points on a sheet; `off` where they lie at none of the places that the template has for them. */
export type SheetPanel = Panel & { readonly off?: 'shut' | 'worked' };

/** More points that free less than this, in µm, are not worth the walk. */
const LEAST_GAIN = 0.1;
/** Closer points where a repair's edge lies somewhere, and no zones say where. */
const ABOUT_A_REPAIR = 4;

/** In walking order; panels on which nothing more is to be learned with the gauge are not on it. */
export function followUp(
  { panels, toRead }: Pick<SurveyFile, 'panels' | 'toRead'>,
  template: VehicleTemplate,
): readonly FollowUpPanel[] {
  const surveyed = new Map(panels.map((one) => [one.panel, one]));
  return template.panels.flatMap((panel) => {
    const one = surveyed.get(panel.id);
    if (needsUltrasound(panel)) return [];
    const onFace = one === undefined ? [] : ofPanel(panel, one);
    return [...onFace, ...offPoints(panel, one?.points ?? [], toRead)];
  });
}

/** What lies at a place of its own on the panel: a place worked deeper is read by its name, so that it is known again. */
function offPoints(
  panel: Panel,
  points: readonly string[],
  toRead: SurveyFile['toRead'],
): readonly FollowUpPanel[] {
  const own = toRead.filter((one) => one.panel === panel.id);
  const isShut = own.some(({ place }) => place === 'shut');
  const worked = own.flatMap(({ place, point }) => (place === 'face' ? (point ?? []) : []));
  return [
    ...(worked.length === 0
      ? []
      : [offPanel(panel, 'worked', worked, 'worked deeper before, and not read since')]),
    ...(isShut
      ? [
          offPanel(
            panel,
            'shut',
            [`${SHUT}${nextNumber(points, SHUT)}`],
            'its door shut, under the rubber: tells whether the side was painted again',
          ),
        ]
      : []),
  ];
}

const SHUT = 'shut ';

function offPanel(
  panel: Panel,
  off: NonNullable<SheetPanel['off']>,
  names: readonly string[],
  why: string,
): FollowUpPanel {
  const points = pointsInRow(names.length).map((place, i) => ({
    ...place,
    point: names[i] ?? place.point,
  }));
  return { panel: { ...panel, points, off }, why };
}

/** Panels of the survey that the template has not, and those asked for by name that get no row. */
export function notOnSheet(
  { value: { panels, toRead }, placeOf }: Placed<SurveyFile>,
  template: VehicleTemplate,
  named: readonly Panel[],
): readonly Diagnostic[] {
  const onSheet = new Set(followUp({ panels, toRead }, template).map(({ panel }) => panel.id));
  const known = new Set(template.panels.map(({ id }) => id));
  const unknown = panels.flatMap(({ panel }, i) =>
    known.has(panel)
      ? []
      : [
          warning(
            'panel-unknown',
            `"${panel}" of the survey is no panel of the ${template.name} template: it is not on the sheet`,
            {
              at: placeOf(['panels', i, 'panel']),
              hint: 'leave the template out, and the one that the survey names is taken',
            },
          ),
        ],
  );
  const surveyed = new Set(panels.map(({ panel }) => panel));
  const done = named
    .filter(({ id }) => !onSheet.has(id))
    .map((panel) =>
      warning('sheet-nothing-more', `${panel.name}: ${whyNothing(panel, surveyed)}`, {
        hint: 'without --for the sheet has every point of the panels that are named',
      }),
    );
  return [...unknown, ...done];
}

function whyNothing(panel: Panel, surveyed: ReadonlySet<string>): string {
  if (!surveyed.has(panel.id)) return 'the survey does not have it, so it is not on the sheet';
  return needsUltrasound(panel)
    ? `of ${panel.substrate}, which this gauge does not read, so it is not on the sheet`
    : 'the survey asks for nothing more there, so it is not on the sheet';
}

function ofPanel(panel: Panel, surveyed: SurveyedPanel): readonly FollowUpPanel[] {
  const { pointCount, points, zones } = surveyed;
  if (pointCount === 0) return [{ panel, why: 'not read yet' }];
  if (zones.length > 0) {
    return named(panel, 'closer points between its two zones, about the edge', {
      prefix: EDGE,
      first: nextNumber(points, EDGE),
      places: pointsAboutEdge(panel.points, zones),
    });
  }
  const more = morePoints(surveyed);
  const repair = surveyed.advice.some(({ code }) => code === 'repair-edge');
  const count = Math.max(more, repair ? ABOUT_A_REPAIR : 0);
  const why = repair
    ? `${count} closer points, to find the edge of the repair`
    : counted(count, 'further point');
  return named(panel, why, {
    prefix: repair ? EDGE : '',
    first: repair ? nextNumber(points, EDGE) : Math.max(pointCount + 1, nextNumber(points, '')),
    places: furtherPoints(panel.points, pointCount, count),
  });
}

/** Closer points about an edge are numbered by themselves. */
const EDGE = 'e';

/** After the highest there is: a new place under an old name would be averaged with it as a repeat. */
const nextNumber = (points: readonly string[], prefix: string): number =>
  1 +
  Math.max(
    0,
    ...points.flatMap((name) => {
      const number = name.startsWith(prefix) ? name.slice(prefix.length) : '';
      return /^\d{1,6}$/.test(number) ? [Number(number)] : [];
    }),
  );

const morePoints = ({ advice }: SurveyedPanel): number =>
  Math.max(
    0,
    ...advice
      .filter(({ code, gain }) => code === 'more-points' && (gain ?? LEAST_GAIN) >= LEAST_GAIN)
      .map(({ points }) => points ?? 0),
  );

function named(
  panel: Panel,
  why: string,
  points: {
    readonly prefix: string;
    readonly first: number;
    readonly places: readonly { readonly u: number; readonly v: number }[];
  },
): readonly FollowUpPanel[] {
  const { prefix, first, places } = points;
  if (places.length === 0) return [];
  const own = places.map((place, i) => ({
    point: `${prefix}${first + i}`,
    u: place.u,
    v: place.v,
  }));
  return [{ panel: { ...panel, points: own }, why }];
}
