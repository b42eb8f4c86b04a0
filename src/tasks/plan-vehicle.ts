/** A vehicle's survey and its defects → plan, time, materials and the order of the job. */
import { type Diagnostic, error, hasErrors, type Outcome } from '../base/diagnostics.ts';
import { suggest } from '../base/did-you-mean.ts';
import type { Remark } from '../base/remark.ts';
import type { CorrectionModel } from '../correction/catalogue.ts';
import type { Defect } from '../correction/defects.ts';
import type { Plan } from '../correction/plan.ts';
import { planCorrection } from '../correction/plan-correction.ts';
import type { Panel } from '../film/template.ts';
import { type DefectRow, readDefectsFile } from '../intake/read-defects-file.ts';
import { planCautions } from '../work/cautions.ts';
import { estimateWork, type WorkEstimate } from '../work/estimate-work.ts';
import type { Assumption } from './assumption.ts';
import { byPanelId } from './match-panels.ts';
import type { LoadedFile, ReadInput } from './read-vehicles.ts';
import type { SurveyResult } from './survey-vehicle.ts';

export type PlanResult = SurveyResult & {
  readonly plan: Plan;
  readonly work: WorkEstimate;
  readonly cautions: readonly Remark[];
};

export function planVehicle(
  surveyed: SurveyResult,
  panels: readonly Panel[],
  defectsFile: LoadedFile | undefined,
): Outcome<PlanResult> {
  const { survey, settings } = surveyed;
  const recorded = recordedDefects(surveyed, defectsFile);
  if (recorded.value === undefined) return { diagnostics: recorded.diagnostics };
  const known = recorded.value;
  const ids = new Set(panels.map(({ id }) => id));
  const asked = survey.panels.filter(({ panel }) => ids.has(panel.id));
  const plan = planCorrection({
    panels: asked,
    defectsOf: (id) => withGeneral(known.get(id) ?? [], settings.correction),
    aim: settings.aim.share,
    hazeAllowed: settings.hazeAllowed,
    hardness: settings.hardness,
    model: settings.correction,
    thinnerClear: settings.film.thinnerClear,
    edgeWidth: settings.film.edgeWidth,
  });
  const missing = asked.filter(
    ({ panel, points }) => points.length > 0 && !hasGeneral(known.get(panel.id) ?? []),
  );
  const work = estimateWork(plan, settings.work);
  const value = {
    ...surveyed,
    inputs: [...surveyed.inputs, ...defectsInput(defectsFile)],
    assumptions: [
      ...surveyed.assumptions,
      ...settings.planAssumptions,
      ...defectAssumption(missing.length, known.size, settings.correction),
    ],
    plan,
    work,
    cautions: planCautions(work, settings.work),
  };
  return { value, diagnostics: recorded.diagnostics };
}

const defectsInput = (file: LoadedFile | undefined): readonly ReadInput[] =>
  file === undefined ? [] : [{ file: file.name, sha256: file.sha256, decisions: null }];

function recordedDefects(
  { survey, settings: { film, correction: model } }: SurveyResult,
  file: LoadedFile | undefined,
): Outcome<ReadonlyMap<string, readonly Defect[]>> {
  if (file === undefined) return { value: new Map(), diagnostics: [] };
  const rows = readDefectsFile(file, film.measurement.largestReading);
  if (rows.value === undefined) return { diagnostics: rows.diagnostics };
  const defects = rows.value.map((row) => ({ row, defect: toDefect(row, model) }));
  const unknown = defects.flatMap(({ row, defect }) =>
    defect === undefined ? [unknownDefect(row, model)] : [],
  );
  const named = defects.flatMap(({ row, defect }) =>
    defect === undefined ? [] : [{ name: row.panel, value: defect, at: rowPlace(row) }],
  );
  const matched = byPanelId(named, survey.template);
  const diagnostics = [...rows.diagnostics, ...unknown, ...matched.diagnostics];
  return matched.value === undefined || hasErrors(diagnostics)
    ? { diagnostics }
    : { value: matched.value, diagnostics };
}

const wordsOf = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, ' ');

function toDefect(
  { defect, grade, depth }: DefectRow,
  { defects, correction }: CorrectionModel,
): Defect | undefined {
  const word = wordsOf(defect);
  const kind = defects.find(({ id, name, aliases }) =>
    [id, name, ...aliases].some((one) => wordsOf(one) === word),
  );
  return kind === undefined ? undefined : { kind, grade: grade ?? correction.assumedGrade, depth };
}

function unknownDefect(row: DefectRow, { defects }: CorrectionModel): Diagnostic {
  const ids = defects.map(({ id }) => id);
  return error('defect-unknown', `"${row.defect}" is no defect that is known here`, {
    at: rowPlace(row, row.defect),
    hint: suggest(row.defect, ids) ?? `one of ${ids.join(', ')}`,
  });
}

function rowPlace({ origin, lineText, panel }: DefectRow, word = panel) {
  const column = lineText.indexOf(word) + 1;
  return {
    file: origin.file,
    line: origin.line,
    lineText,
    ...(column === 0 ? {} : { column, length: word.length }),
  };
}

const hasGeneral = (defects: readonly Defect[]): boolean =>
  defects.some(({ kind }) => kind.scope === 'general' || kind.scope === 'refinish');

/** Where no general defect was recorded, swirl marks of the assumed grade are taken to be there. */
function withGeneral(defects: readonly Defect[], model: CorrectionModel): readonly Defect[] {
  if (hasGeneral(defects)) return defects;
  const kind = model.defects.find(({ id }) => id === 'swirl-marks');
  if (kind === undefined) throw new Error('swirl marks are a built-in defect');
  return [...defects, { kind, grade: model.correction.assumedGrade, depth: null }];
}

function defectAssumption(
  missing: number,
  recorded: number,
  { correction }: CorrectionModel,
): readonly Assumption[] {
  if (missing === 0) return [];
  const grade = correction.assumedGrade;
  const where = recorded === 0 ? 'on every panel' : 'on panels read without a record';
  return [{ code: 'defects', text: `swirl marks of grade ${grade} ${where}`, origin: 'built-in' }];
}
