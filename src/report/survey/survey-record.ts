import { Z_95 } from '../../base/stats/normal.ts';
import { expandedUncertainty } from '../../base/uncertainty.ts';
import { placesToRead } from '../../film/help/places-to-read.ts';
import type { Besides } from '../../film/limits/topcoat-cases.ts';
import { isZone, type PanelSurvey } from '../../film/survey.ts';
import type { Panel } from '../../film/template/template.ts';
import type { SurveyHelp, SurveyReport } from '../../tasks/survey/survey-help.ts';
import type { SurveyResult } from '../../tasks/survey/survey-vehicle.ts';
import { envelope, type RecordContext, remarkRecord } from '../envelope.ts';
import { factsRecord } from '../facts-record.ts';
import type { MachineRecord } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { adviceOf, adviceRecord } from './help-lines.ts';
import { surenessRecord } from './sureness-record.ts';
import { pointRecord, uncertaintyRecord, whyRecord } from './why-record.ts';

/** `leastcut/survey/1`. */
export const surveyRecord = (
  { result, panels, helped, why }: SurveyReport,
  context: RecordContext,
): MachineRecord => ({
  ...envelope('survey', result, context),
  template: result.survey.template.id,
  baseline_um: recordedOrNull(result.survey.baseline),
  baseline_expanded_um: recordedOrNull(
    result.survey.baselineUncertain === null
      ? null
      : expandedUncertainty(result.survey.baselineUncertain),
  ),
  baseline_panels: result.survey.baselineMakers.map(({ id }) => id),
  notes: result.survey.notes.map(remarkRecord),
  to_read: placesToRead(result.survey.panels),
  panels: chosen(result.survey.panels, panels).map((survey) =>
    panelRecord(survey, { result, helped, isAsked: why.includes(survey.panel) }),
  ),
});

export const chosen = <T extends { readonly panel: Panel }>(
  all: readonly T[],
  panels: readonly Panel[],
): readonly T[] => {
  const ids = new Set(panels.map(({ id }) => id));
  return all.filter(({ panel }) => ids.has(panel.id));
};

type PanelContext = {
  readonly result: SurveyResult;
  readonly helped: SurveyHelp;
  /** Whether the panel is to be taken apart. */
  readonly isAsked: boolean;
};

const besidesRecord = ({ condition, chance, topcoat }: Besides): MachineRecord => ({
  condition,
  condition_prob: recorded(chance),
  clear_um: recordedOrNull(topcoat?.clear.mean),
});

/** One clear of twenty is less. */
export const clearLow = ({ topcoat }: PanelSurvey): number | null =>
  topcoat === null ? null : recorded(topcoat.clear.mean - Z_95 * topcoat.clear.sd);

/** Cells of the panel that gave no reading, blank ones too; none of a zone, which is made of readings. */
const leftOutRecord = (survey: PanelSurvey, { leftOut }: SurveyResult): readonly MachineRecord[] =>
  isZone(survey)
    ? []
    : leftOut
        .filter(({ panel }) => panel === survey.panel.id)
        .map(({ file, line, column, point, text, class: why, reason }) => ({
          ...{ file, line, column, point, text },
          ...{ class: why, reason },
        }));

function panelRecord(survey: PanelSurvey, context: PanelContext): MachineRecord {
  const { result, helped, isAsked } = context;
  const { statistics, topcoat } = survey;
  return {
    panel: survey.panel.id,
    n_points: survey.points.length,
    points: survey.points.map(({ point }) => point),
    n_readings: survey.readingCount,
    mean_um: recordedOrNull(statistics?.mean),
    sd_um: recordedOrNull(statistics?.sd),
    min_um: recordedOrNull(statistics?.min),
    max_um: recordedOrNull(statistics?.max),
    median_um: recordedOrNull(statistics?.median),
    moderated_sd_um: recordedOrNull(survey.film?.spread.sd),
    moderated_dof: recordedOrNull(survey.film?.spread.dof),
    calibration_um: recordedOrNull(survey.film?.calibration),
    uncertainty: uncertaintyRecord(survey),
    thinnest_um: recordedOrNull(survey.thinnest),
    facts: factsRecord(survey, result),
    substrate: survey.panel.substrate,
    baseline_um: recordedOrNull(survey.baseline),
    condition: survey.condition,
    ...surenessRecord(survey, result.settings.terms),
    also: survey.also,
    may_be: (topcoat?.besides ?? []).map(besidesRecord),
    evidence: survey.evidence.map(remarkRecord),
    clear: {
      mean_um: recordedOrNull(topcoat?.clear.mean),
      sd_um: recordedOrNull(topcoat?.clear.sd),
      low_um: clearLow(survey),
    },
    budget_um: recorded(survey.budget),
    bound_by: survey.boundBy.code,
    limits: survey.limits.map(remarkRecord),
    low_points: survey.lowPoints,
    high_points: survey.highPoints,
    other_points: survey.otherPoints.map(pointRecord),
    excluded: leftOutRecord(survey, result),
    advice: adviceOf(survey, helped).map(adviceRecord),
    why: isAsked ? whyRecord(survey, result.settings) : null,
    zones: survey.zones.map((zone) => ({
      ...panelRecord(zone, context),
      zone: zone.zone,
    })),
  };
}
