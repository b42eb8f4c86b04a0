/** What a plan is asked for: a survey, the defects recorded on its panels, and the settings in force. */
import type { Defect } from '../../correction/defects.ts';
import type { PlanRequest } from '../../correction/plan/plan-request.ts';
import type { CorrectionModel } from '../../correction/removal/catalogue.ts';
import { allowanceAfterSpot, allowanceAt } from '../../film/limits/allowance-at.ts';
import { allowanceOnPlace } from '../../film/limits/allowance-on-place.ts';
import { isSound } from '../../film/limits/sound-cap.ts';
import type { PanelSurvey } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import { heldToShown } from '../survey/shown-at-spots.ts';
import type { SurveyResult } from '../survey/survey-vehicle.ts';
import { type DefectsByPanel, usualDefect } from './recorded-defects.ts';

export function planRequestOf(
  { survey, settings, paint }: SurveyResult,
  panels: readonly Panel[],
  recorded: DefectsByPanel,
): PlanRequest {
  const ids = new Set(panels.map(({ id }) => id));
  const { terms, film, correction, aim, hazeAllowed } = settings;
  const grounds = { terms, model: film };
  // No original panel is there to go by: no spot frees repaint, and the survey says so.
  const hasSound = survey.panels.some((one) => isSound(one, terms.risk));
  const isBeyondSpots = ({ boundBy }: PanelSurvey): boolean =>
    !hasSound && boundBy.code === 'sound-panels';
  const ofPart: PlanRequest['allowanceAt'] = (part, logSd) => {
    if (paint.hasOwnSpot(part.panel.id) && !isBeyondSpots(part)) {
      return heldToShown(allowanceAfterSpot(part, survey.panels, logSd, grounds), part);
    }
    // Repaint without a spot that frees it: however a removal is foretold, its limits stand.
    return isRepaintHeld(part) ? part : allowanceAt(part, logSd, grounds);
  };
  return {
    panels: survey.panels.filter(({ panel }) => ids.has(panel.id)),
    defectsOf: (id) => recorded.get(id) ?? assumedDefects(correction),
    aim: aim.share,
    hazeAllowed,
    paintOf: paint.paintOf,
    allowanceAt: ofPart,
    // Off factory film nothing is known of the clear at a place: the panel's own limits stand.
    allowanceOnPlace: (part, logSd) => {
      if (part.topcoat === null) return ofPart(part, logSd);
      const onPlace = allowanceOnPlace(part, logSd, grounds);
      if (!isFreedBySpot(part)) return onPlace;
      const ofAll = ofPart(part, logSd);
      return ofAll.budget < onPlace.budget ? ofAll : onPlace;
    },
    model: correction,
    thinnerClear: film.thinnerClear,
    edgeWidth: film.edgeWidth,
  };
}

/** Of film that may be repaint no place gets more than its own test spot freed. */
const isFreedBySpot = ({ limits }: PanelSurvey): boolean =>
  limits.some(({ ofRepaint }) => ofRepaint !== undefined);

const isRepaintHeld = ({ boundBy: { code } }: PanelSurvey): boolean =>
  code === 'sound-panels' || code === 'test-spot';

/** Where nobody looked, swirl marks of the assumed grade; a panel of which anything is on record was looked at. */
const assumedDefects = (model: CorrectionModel): readonly Defect[] => [
  { kind: usualDefect(model), grade: model.correction.assumedGrade, depth: null },
];
