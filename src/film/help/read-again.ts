/**
 * What it would free to read the points again that stand out from their panel: if they read as the others do, or if
 * low ones turn out to lie at an edge, where film is thin and enters no statistic.
 *
 * The whole car is surveyed once more as it would be then: such a point raises the spread that every panel is drawn
 * towards, so that it holds others back too. If it reads the same again nothing changes.
 */
import { at } from '../../base/at.ts';
import { LEAST_TOLD } from '../../base/rounding.ts';
import { median } from '../../base/stats/summary.ts';
import { sum } from '../../base/sum.ts';
import { type Micrometres, type Minutes, micrometres } from '../../base/units.ts';
import { assessFilm } from '../assess-film.ts';
import type { Reading } from '../reading.ts';
import { isZone, type PanelSurvey, partsOf, type Survey } from '../survey.ts';
import type { SurveyRequest } from '../survey-request.ts';
import type { Help, PartGain } from './what-would-help.ts';

/** Nothing where no point stands out. `survey` is what came of `request`, and `part` one of its parts. */
export function readAgainHelp(
  part: PanelSurvey,
  survey: Survey,
  request: SurveyRequest,
): readonly Help[] {
  const { lowPoints, highPoints } = part;
  const flagged = [...lowPoints, ...highPoints];
  const others = part.points.filter(({ point }) => !flagged.includes(point));
  if (flagged.length === 0 || others.length === 0) return [];
  const usual = lowerMedian(others.flatMap(({ repeats }) => repeats));
  const asOthers = told(part, survey, {
    ...request,
    readings: changed(request.readings, part, flagged, (one, [first]) => ({
      ...one,
      thickness: micrometres(one.thickness + usual - first.thickness),
    })),
  });
  const time = (request.model.measuring.pointTime * flagged.length) as Minutes;
  const again: Help = {
    code: 'read-again',
    ...asOthers,
    otherwise: { gain: NOTHING },
    time,
    points: null,
  };
  return [again, ...(lowPoints.length === 0 ? [] : [atEdge(part, survey, request)])].filter(
    ({ gain, elsewhere = [] }) => Math.abs(gain) >= LEAST_TOLD || elsewhere.length > 0,
  );
}

/** Its low points written as lying at an edge, which takes no time. */
function atEdge(part: PanelSurvey, survey: Survey, request: SurveyRequest): Help {
  const { gain } = told(part, survey, {
    ...request,
    readings: changed(request.readings, part, part.lowPoints, (one) => ({ ...one, place: 'edge' })),
  });
  return { code: 'edge-point', gain, time: null, points: null };
}

const NOTHING = micrometres(0);

/** One that the gauge showed, so that its step stays what it is. */
const lowerMedian = (values: readonly Micrometres[]): Micrometres => {
  const middle = median(values);
  return micrometres(Math.max(...values.filter((value) => value <= middle)));
};

/** Readings of the whole film at these points of the part; `to` is given all of a point's beside each. */
function changed(
  readings: readonly Reading[],
  { panel }: PanelSurvey,
  points: readonly string[],
  to: (one: Reading, ofPoint: readonly [Reading, ...Reading[]]) => Reading,
): readonly Reading[] {
  const isMeant = (one: Reading): boolean =>
    one.panel === panel.id &&
    one.layer === '' &&
    one.place === 'face' &&
    points.includes(one.point);
  return readings.map((one) => {
    if (!isMeant(one)) return one;
    const [first = one, ...more] = readings.filter(
      (other) => isMeant(other) && other.point === one.point,
    );
    return to(one, [first, ...more]);
  });
}

/** What may go more then, from the part itself and from each of the others. */
function told(
  part: PanelSurvey,
  survey: Survey,
  then: SurveyRequest,
): { readonly gain: Micrometres; readonly elsewhere: readonly PartGain[] } {
  const again = assessFilm(then);
  const gains = survey.panels
    .flatMap((panel, i) =>
      partsOf(panel).map((one) => ({
        part: one,
        gain: micrometres(budgetIn(at(again.panels, i), one) - one.budget),
      })),
    )
    // Off factory film limits hang on spots and other panels, not on its readings.
    .map((one) => (one.part.topcoat === null ? { ...one, gain: NOTHING } : one));
  return {
    gain: micrometres(sum(gains.filter((one) => one.part === part).map(({ gain }) => gain))),
    elsewhere: gains.filter((one) => one.part !== part && Math.abs(one.gain) >= LEAST_TOLD),
  };
}

/** Of a zone that is none any more, what its panel allows. */
function budgetIn(panel: PanelSurvey, part: PanelSurvey): Micrometres {
  const zone = panel.zones.find((one) => isZone(part) && one.zone === part.zone);
  return (zone ?? panel).budget;
}
