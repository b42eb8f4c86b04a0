/**
 * A survey for a spreadsheet: a row for each panel, and for each zone in place of one in two. What may
 * go is the figure to work to; of a panel near its line the figure if its word holds stands beside it.
 */
import { isZone, type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { SurveyedVehicle } from '../../tasks/survey/survey-files.ts';
import type { DataTable } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { type ColumnsOf, tableOf } from '../table-of.ts';
import { chosen } from './survey-record.ts';

export const surveyTable = (vehicles: readonly SurveyedVehicle[]): DataTable =>
  tableOf(
    columns,
    vehicles.flatMap(({ result, panels }) =>
      chosen(result.survey.panels, panels)
        .flatMap(partsOf)
        .map((survey) => ({ vehicle: result.vehicle, survey })),
    ),
  );

type Row = { readonly vehicle: string | null; readonly survey: PanelSurvey };

const columns: ColumnsOf<Row> = {
  vehicle: ({ vehicle }) => vehicle,
  panel: ({ survey }) => survey.panel.id,
  zone: ({ survey }) => (isZone(survey) ? survey.zone : null),
  condition: ({ survey }) => survey.condition,
  condition_sure: ({ survey }) => survey.sureness?.sure ?? null,
  also: ({ survey }) => survey.also.join(' '),
  budget_um: ({ survey }) => recorded(survey.budget),
  bound_by: ({ survey }) => survey.boundBy.code,
  if_word_holds_um: ({ survey }) => recordedOrNull(survey.otherSide?.ifWordHolds),
  otherwise: ({ survey }) => survey.otherSide?.condition ?? null,
  n_points: ({ survey }) => survey.points.length,
  n_readings: ({ survey }) => survey.readingCount,
  mean_um: ({ survey }) => recordedOrNull(survey.statistics?.mean),
  sd_um: ({ survey }) => recordedOrNull(survey.statistics?.sd),
  min_um: ({ survey }) => recordedOrNull(survey.statistics?.min),
  max_um: ({ survey }) => recordedOrNull(survey.statistics?.max),
  median_um: ({ survey }) => recordedOrNull(survey.statistics?.median),
  thinnest_um: ({ survey }) => recordedOrNull(survey.thinnest),
  baseline_um: ({ survey }) => recordedOrNull(survey.baseline),
  clear_um: ({ survey }) => recordedOrNull(survey.topcoat?.clear.mean),
  clear_sd_um: ({ survey }) => recordedOrNull(survey.topcoat?.clear.sd),
  substrate: ({ survey }) => survey.panel.substrate,
  low_points: ({ survey }) => survey.lowPoints.join(' '),
  high_points: ({ survey }) => survey.highPoints.join(' '),
  evidence: ({ survey }) => survey.evidence.map(({ text }) => text).join('; '),
};
