/**
 * A survey for a spreadsheet: a row for each panel, and for each zone in place of one in two. What may
 * go is the figure to work to; of a panel near its line the figure if its word holds stands beside it.
 *
 * Some columns ask only what was read. Where no others are asked for, nothing is judged.
 */
import { type MeasuredPart, measuredParts } from '../../film/measured-panels.ts';
import { type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { MeasuredCar, SurveyedVehicle } from '../../tasks/survey/survey-files.ts';
import type { DataTable } from '../model.ts';
import { recorded, recordedOrNull } from '../recorded.ts';
import { type ColumnsOf, codesOf, tableOf } from '../table-of.ts';
import { chosen, clearLow } from './survey-record.ts';

export const surveyTable = (vehicles: readonly SurveyedVehicle[]): DataTable =>
  tableOf(
    columns,
    vehicles.flatMap(({ result, panels }) =>
      chosen(result.survey.panels, panels)
        .flatMap(partsOf)
        .map((survey) => ({ vehicle: result.vehicle, survey })),
    ),
  );

/** Columns that ask only what was read, of cars of which no more is known. */
export const measuredTable = (
  vehicles: readonly MeasuredCar[],
  names: readonly string[],
): DataTable =>
  tableOf(
    Object.fromEntries(Object.entries(measuredColumns).filter(([name]) => names.includes(name))),
    vehicles.flatMap(({ result, panels }) =>
      chosen(result.panels, panels)
        .flatMap(measuredParts)
        .map((survey) => ({ vehicle: result.vehicle, survey })),
    ),
  );

/** Whether all of these are columns that ask only what was read. */
export const areMeasured = (names: readonly string[]): boolean =>
  names.every((name) => Object.hasOwn(measuredColumns, name));

type Row<Survey> = { readonly vehicle: string | null; readonly survey: Survey };

const part: ColumnsOf<Row<MeasuredPart>> = {
  vehicle: ({ vehicle }) => vehicle,
  panel: ({ survey }) => survey.panel.id,
  zone: ({ survey }) => survey.zone ?? null,
};

const verdict: ColumnsOf<Row<PanelSurvey>> = {
  condition: ({ survey }) => survey.condition,
  condition_sure: ({ survey }) => survey.sureness?.sure ?? null,
  also: ({ survey }) => survey.also.join(' '),
  budget_um: ({ survey }) => recorded(survey.budget),
  bound_by: ({ survey }) => survey.boundBy.code,
  if_word_holds_um: ({ survey }) => recordedOrNull(survey.otherSide?.ifWordHolds),
  if_otherwise_condition: ({ survey }) => survey.otherSide?.condition ?? null,
};

const statistics: ColumnsOf<Row<MeasuredPart>> = {
  n_points: ({ survey }) => survey.points.length,
  n_readings: ({ survey }) => survey.readingCount,
  mean_um: ({ survey }) => recordedOrNull(survey.statistics?.mean),
  sd_um: ({ survey }) => recordedOrNull(survey.statistics?.sd),
  min_um: ({ survey }) => recordedOrNull(survey.statistics?.min),
  max_um: ({ survey }) => recordedOrNull(survey.statistics?.max),
  median_um: ({ survey }) => recordedOrNull(survey.statistics?.median),
};

const film: ColumnsOf<Row<PanelSurvey>> = {
  thinnest_um: ({ survey }) => recordedOrNull(survey.thinnest),
  baseline_um: ({ survey }) => recordedOrNull(survey.baseline),
  clear_mean_um: ({ survey }) => recordedOrNull(survey.topcoat?.clear.mean),
  clear_sd_um: ({ survey }) => recordedOrNull(survey.topcoat?.clear.sd),
  clear_low_um: ({ survey }) => clearLow(survey),
};

const made: ColumnsOf<Row<MeasuredPart>> = {
  substrate: ({ survey }) => survey.panel.substrate,
};

const grounds: ColumnsOf<Row<PanelSurvey>> = {
  low_points: ({ survey }) => survey.lowPoints.join(' '),
  high_points: ({ survey }) => survey.highPoints.join(' '),
  evidence: ({ survey }) => codesOf(survey.evidence),
  evidence_text: ({ survey }) => survey.evidence.map(({ text }) => text).join('; '),
};

const measuredColumns: ColumnsOf<Row<MeasuredPart>> = { ...part, ...statistics, ...made };
const columns: ColumnsOf<Row<PanelSurvey>> = {
  ...part,
  ...verdict,
  ...statistics,
  ...film,
  ...made,
  ...grounds,
};
