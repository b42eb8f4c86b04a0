/**
 * A survey for a spreadsheet: a row for each panel, and for each zone in place of one in two. What may
 * go is the figure to work to; of a panel near its line the figure if its word holds stands beside it.
 */
import { isZone, type PanelSurvey, partsOf } from '../../film/survey.ts';
import type { SurveyedVehicle } from '../../tasks/survey/survey-files.ts';
import { machine, machineOrNull } from '../envelope.ts';
import type { DataCell, DataTable } from '../model.ts';
import { chosen } from './survey-record.ts';

export function surveyTable(vehicles: readonly SurveyedVehicle[]): DataTable {
  const rows = vehicles.flatMap(({ result, panels }) =>
    chosen(result.survey.panels, panels)
      .flatMap(partsOf)
      .map((part) => ({ vehicle: result.vehicle, ...cellsOf(part) })),
  );
  return {
    columns: [...columns],
    rows: rows.map((row: Readonly<Record<string, DataCell>>) =>
      columns.map((name) => row[name] ?? null),
    ),
  };
}

const columns = [
  'vehicle',
  'panel',
  'zone',
  'condition',
  'condition_sure',
  'also',
  'budget_um',
  'bound_by',
  'if_word_holds_um',
  'otherwise',
  'n_points',
  'n_readings',
  'mean_um',
  'sd_um',
  'min_um',
  'max_um',
  'median_um',
  'thinnest_um',
  'baseline_um',
  'clear_um',
  'clear_sd_um',
  'substrate',
  'low_points',
  'high_points',
  'evidence',
] as const;

const cellsOf = (survey: PanelSurvey): Readonly<Record<string, DataCell>> => ({
  panel: survey.panel.id,
  zone: isZone(survey) ? survey.zone : null,
  condition: survey.condition,
  condition_sure: survey.sureness?.sure ?? null,
  also: survey.also.join(' '),
  budget_um: machine(survey.budget),
  bound_by: survey.boundBy.code,
  if_word_holds_um: machineOrNull(survey.otherSide?.ifWordHolds),
  otherwise: survey.otherSide?.condition ?? null,
  n_points: survey.points.length,
  n_readings: survey.readingCount,
  mean_um: machineOrNull(survey.statistics?.mean),
  sd_um: machineOrNull(survey.statistics?.sd),
  min_um: machineOrNull(survey.statistics?.min),
  max_um: machineOrNull(survey.statistics?.max),
  median_um: machineOrNull(survey.statistics?.median),
  thinnest_um: machineOrNull(survey.thinnest),
  baseline_um: machineOrNull(survey.baseline),
  clear_um: machineOrNull(survey.topcoat?.clear.mean),
  clear_sd_um: machineOrNull(survey.topcoat?.clear.sd),
  substrate: survey.panel.substrate,
  low_points: survey.lowPoints.join(' '),
  high_points: survey.highPoints.join(' '),
  evidence: survey.evidence.map(({ text }) => text).join('; '),
});
