/**
 * What it would free to read the points again that stand out from their panel: if they read as the others do, or if
 * low ones turn out to lie at an edge, where film is thin and enters no statistic.
 *
 * All panels of the car are judged once more as they would be then: such a point raises the spread that every panel is
 * drawn towards, so that it holds others back too. If it reads the same again nothing changes.
 */
import { LEAST_TOLD } from '../../base/rounding.ts';
import { median } from '../../base/stats/summary.ts';
import { type Micrometres, type Minutes, micrometres } from '../../base/units.ts';
import { budgetIn } from '../car-budgets.ts';
import { type GatheredCar, gatherCar, withReadingsOf } from '../gathered-car.ts';
import type { Reading } from '../reading.ts';
import { type PanelSurvey, partsOf, type Survey } from '../survey.ts';
import type { SurveyRequest } from '../survey-request.ts';
import { heldBySpot } from './held-by-spot.ts';
import type { Help } from './what-would-help.ts';

/** Of any part of `survey`, which is what came of `request`; nothing where no point stands out. */
export function readAgainHelp(
  survey: Survey,
  request: SurveyRequest,
): (part: PanelSurvey) => readonly Help[] {
  const gainsIf: GainsIf = (part, points, to) => {
    const { id } = part.panel;
    const ofPanel = request.readings.filter(({ panel }) => panel === id);
    const then = withReadingsOf(gatherCar(request), id, changed(ofPanel, points, to), request);
    return (one) => gainIn(then, one, request);
  };
  return (part) => {
    const again = asOthers(part, survey, gainsIf);
    if (again === null) return [];
    const time = (request.model.measuring.pointTime * flaggedOf(part).length) as Minutes;
    return [{ ...again, time }, ...atEdge(part, gainsIf)].filter(
      ({ gain, elsewhere = [] }) => Math.abs(gain) >= LEAST_TOLD || elsewhere.length > 0,
    );
  };
}

/** How much more may go from a part of the car. */
type GainOn = (part: PanelSurvey) => Micrometres;
/** Of a reading at a point, of which all readings are given. */
type Change = (one: Reading, ofPoint: readonly [Reading, ...Reading[]]) => Reading;
/** The gains there would be with the readings at these points of a part changed. */
type GainsIf = (part: PanelSurvey, points: readonly string[], to: Change) => GainOn;

const NOTHING = micrometres(0);

const flaggedOf = ({ lowPoints, highPoints }: PanelSurvey): readonly string[] => [
  ...lowPoints,
  ...highPoints,
];

/** Null where no point stands out, or none is left beside those that do. */
function asOthers(part: PanelSurvey, survey: Survey, gainsIf: GainsIf): Omit<Help, 'time'> | null {
  const flagged = flaggedOf(part);
  const others = part.points.filter(({ point }) => !flagged.includes(point));
  if (flagged.length === 0 || others.length === 0) return null;
  const usual = lowerMedian(others.flatMap(({ repeats }) => repeats));
  const gainOn = gainsIf(part, flagged, (one, [first]) => ({
    ...one,
    thickness: micrometres(one.thickness + usual - first.thickness),
  }));
  const elsewhere = survey.panels
    .flatMap(partsOf)
    .filter((one) => one !== part)
    .map((one) => ({ part: one, gain: gainOn(one) }));
  return {
    code: 'read-again',
    gain: gainOn(part),
    elsewhere: elsewhere.filter(({ gain }) => Math.abs(gain) >= LEAST_TOLD),
    otherwise: { gain: NOTHING },
    points: null,
  };
}

/** Its low points, if there are any, written as lying at an edge: that takes no time. */
function atEdge(part: PanelSurvey, gainsIf: GainsIf): readonly Help[] {
  const { lowPoints } = part;
  if (lowPoints.length === 0) return [];
  const gainOn = gainsIf(part, lowPoints, (one) => ({ ...one, place: 'edge' }));
  return [{ code: 'edge-point', gain: gainOn(part), time: null, points: null }];
}

/** One that the gauge showed, so that its step stays what it is. */
const lowerMedian = (values: readonly Micrometres[]): Micrometres => {
  const middle = median(values);
  return micrometres(Math.max(...values.filter((value) => value <= middle)));
};

/** Readings of one panel, those of the whole film at these points of its face changed. */
function changed(
  readings: readonly Reading[],
  points: readonly string[],
  to: Change,
): readonly Reading[] {
  const isMeant = ({ layer, place, point }: Reading): boolean =>
    layer === '' && place === 'face' && points.includes(point);
  return readings.map((one) => {
    if (!isMeant(one)) return one;
    const [first = one, ...more] = readings.filter(
      (other) => isMeant(other) && other.point === one.point,
    );
    return to(one, [first, ...more]);
  });
}

function gainIn(car: GatheredCar, part: PanelSurvey, request: SurveyRequest): Micrometres {
  // Off factory film limits hang on spots and other panels, not on its readings; what a spot frees is judged here without it.
  if (part.topcoat === null || heldBySpot(part) !== null) return NOTHING;
  return micrometres(budgetIn(car, part, request) - part.budget);
}
