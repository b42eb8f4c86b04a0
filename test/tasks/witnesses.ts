/** Runs of survey, plan, methods and template that between them rest on every number of the model. */

import { squareMetres } from '../../src/base/units.ts';
import { unusualThings } from '../../src/film/template/unusual-template.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { readFilmRecord } from '../../src/formats/film-record.ts';
import { readJob } from '../../src/formats/job/read-job.ts';
import { readRates } from '../../src/formats/rates.ts';
import { readTemplate } from '../../src/formats/template/template.ts';
import { compareRecord } from '../../src/report/compare/compare-record.ts';
import { gaugeRecord } from '../../src/report/gauge/gauge-record.ts';
import { gradeRecord } from '../../src/report/grade/grade-record.ts';
import { methodListRecord, shownMethodRecord } from '../../src/report/methods/methods-record.ts';
import { planBlocks } from '../../src/report/plan/plan-blocks.ts';
import { planRecord } from '../../src/report/plan/plan-record.ts';
import { workDetailBlocks } from '../../src/report/plan/work-blocks.ts';
import { workRecord } from '../../src/report/plan/work-record.ts';
import { quoteRecord } from '../../src/report/quote/quote-record.ts';
import { spotRecord } from '../../src/report/spot/spot-record.ts';
import { surveyBlocks } from '../../src/report/survey/survey-blocks.ts';
import { surveyRecord } from '../../src/report/survey/survey-record.ts';
import { sheetBlocks } from '../../src/report/template/template-sheet.ts';
import { compareFiles } from '../../src/tasks/compare/compare-files.ts';
import { checkGaugeFiles } from '../../src/tasks/gauge/check-gauge.ts';
import { gradeFiles } from '../../src/tasks/grade/grade-files.ts';
import { listMethods, methodSources, showMethod } from '../../src/tasks/methods/methods.ts';
import { ratesReport } from '../../src/tasks/methods/rates-report.ts';
import { planFiles } from '../../src/tasks/plan/plan-files.ts';
import { paceOf } from '../../src/tasks/plan/plan-vehicle.ts';
import { quoteFiles } from '../../src/tasks/quote/quote-files.ts';
import { withRates } from '../../src/tasks/settings/rates-in-use.ts';
import { resolveSettings, type Settings } from '../../src/tasks/settings/settings.ts';
import { withHistory } from '../../src/tasks/settings/work-history.ts';
import { spotFiles } from '../../src/tasks/spot/spot-files.ts';
import {
  type SurveyedVehicle,
  type SurveyFilesRequest,
  surveyFiles,
} from '../../src/tasks/survey/survey-files.ts';
import { type SurveyReport, withHelp } from '../../src/tasks/survey/survey-help.ts';
import { planCautions } from '../../src/work/cautions.ts';
import { estimateWork } from '../../src/work/estimate-work.ts';
import { gradeRequest } from './grading.ts';
import { layersOf } from './layers.ts';

type Keys = Readonly<Record<string, unknown>>;
type Files = Readonly<Record<string, string>>;
type Numbers = Readonly<Record<string, number>>;

/** Keys of a job and of a shop file, with readings and defects as files hold them. */
export type Scenario = {
  readonly readings: string;
  readonly defects?: string;
  readonly job?: Keys;
  readonly shop?: Keys;
  readonly spots?: string;
};

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const context = { version: '0', diagnostics: [] };
const page = { unit: 'um', verbose: true } as const;

function settingsOf(
  { job = {}, shop = {} }: Omit<Scenario, 'readings'>,
  numbers: Numbers,
): Settings {
  const own = (shop['numbers'] ?? {}) as Numbers;
  return resolveSettings(layersOf({ job, shop: { ...shop, numbers: { ...own, ...numbers } } }));
}

function requestOf(scenario: Scenario, numbers: Numbers): SurveyFilesRequest {
  const settings = settingsOf(scenario, numbers);
  const { job = {} } = scenario;
  const text = JSON.stringify({ schema: 'leastcut/job/1', ...job });
  const file = readJob('job.json', text).value;
  const vehicle = file?.value.vehicle;
  return {
    files: [{ name: 'readings.csv', bytes: bytes(scenario.readings), sha256: '' }],
    templates: builtInTemplates,
    templateId: 'saloon',
    intake: { plausible: settings.film.measurement },
    vehicle: undefined,
    keepUnknownPanels: false,
    templateRules: settings.templateRules,
    size:
      vehicle?.length === undefined || file === undefined
        ? undefined
        : { size: { length: vehicle.length }, placeOf: () => file.placeOf(['vehicle']) },
    settings,
    job: file,
    filmRecord: undefined,
    panels: [],
    ...(scenario.spots === undefined
      ? {}
      : { spots: [{ name: 'spots.csv', bytes: bytes(scenario.spots), sha256: '' }] }),
  };
}

/** Methods by what was measured on earlier vehicles. */
export function ratesText(observations: readonly Keys[], numbers: Numbers): string {
  const text = JSON.stringify({ schema: 'leastcut/rates/1', observations });
  const file = readRates('rates.json', text).value;
  if (file === undefined) throw new Error('a rates file that cannot be read');
  const known = withRates(settingsOf({}, numbers), { file, name: 'rates.json', origin: 'flag' });
  if (known.value === undefined) throw new Error('no settings');
  const list = listMethods(methodSources(known.value));
  return said(methodListRecord(list, [], context, ratesReport(known.value)));
}

/** Grades of a class, its first file the reference, or the class by itself. */
export function gradeText(files: Files, numbers: Numbers, consensus = false): string {
  const settings = settingsOf({}, numbers);
  const [reference, ...trainees] = Object.entries(files).map(([name, text]) => ({
    name,
    bytes: bytes(text),
    sha256: name,
  }));
  const { value, diagnostics } = gradeFiles(
    gradeRequest({
      reference: consensus ? undefined : reference,
      trainees,
      settings,
    }),
  );
  const graded = value === undefined ? null : gradeRecord(value, context);
  return said([graded, diagnostics]);
}

/** Settings as such are left out: that a value is listed does not show that it acts. */
const said = (value: unknown): string =>
  JSON.stringify(value, (key, part: unknown) => (key === 'settings' ? undefined : part));

const everyWhy = (surveyed: SurveyedVehicle): SurveyReport => ({
  ...withHelp(surveyed),
  why: surveyed.result.survey.template.panels,
});

const unlisted = (report: SurveyReport): SurveyReport => ({
  ...report,
  result: { ...report.result, settings: withoutList(report.result.settings) },
});

export function surveyText(scenario: Scenario, numbers: Numbers): string {
  const { value, diagnostics } = surveyFiles(requestOf(scenario, numbers));
  const pages = (value ?? []).map((surveyed) => [
    surveyRecord(everyWhy(surveyed), context),
    surveyBlocks(unlisted(everyWhy(surveyed)), page),
    surveyBlocks(unlisted(withHelp(surveyed)), page),
  ]);
  return said([pages, diagnostics]);
}

export function planText(scenario: Scenario, numbers: Numbers): string {
  const { defects = 'panel,defect,grade\n' } = scenario;
  const file = { name: 'defects.csv', bytes: bytes(defects), sha256: '' };
  const request = requestOf(scenario, numbers);
  const { value, diagnostics } = planFiles({
    ...request,
    defects: scenario.defects === undefined ? undefined : file,
  });
  const pages = (value ?? []).map(({ result, panels }) => [
    planRecord(result, panels, context),
    planBlocks({ ...result, settings: withoutList(result.settings) }, panels, page),
  ]);
  return said([pages, diagnostics]);
}

/** Readings of two visits that are marked, with a film record. */
export function compareText(
  [first, ...later]: readonly [string, ...string[]],
  numbers: Numbers,
  visits: readonly Keys[] = [],
): string {
  const request = requestOf({ readings: first }, numbers);
  const text = JSON.stringify({ schema: 'leastcut/film-record/1', visits });
  const { value, diagnostics } = compareFiles({
    ...request,
    files: [first, ...later].map((visit, i) => ({
      ...{ name: `visit-${i + 1}.csv`, bytes: bytes(visit), sha256: visit },
    })),
    settingsAfter: request.settings,
    gauges: { before: undefined, after: undefined },
    filmRecord: readFilmRecord('record.json', text).value,
    ...{ marked: true, plan: undefined, planFile: undefined },
    ...{ workedFile: undefined, gloss: undefined },
  });
  return said([value === undefined ? null : compareRecord(value, context), diagnostics]);
}

/** What a quote comes to, as a record: the page names the numbers themselves. */
export function quoteText(scenario: Scenario, numbers: Numbers): string {
  const { value, diagnostics } = quoteFiles({
    ...requestOf(scenario, numbers),
    defects: undefined,
  });
  const records = (value ?? []).map(({ result }) =>
    quoteRecord(result, { ...context, date: null }),
  );
  return said([records, diagnostics]);
}

const withoutList = (settings: Settings): Settings => ({ ...settings, effective: [] });

/** What a file of test spots comes to. */
export function spotText(spots: string, numbers: Numbers): string {
  const settings = settingsOf({}, numbers);
  const file = { name: 'spots.csv', bytes: bytes(spots), sha256: '' };
  const { value, diagnostics } = spotFiles({ files: [file], settings, job: undefined });
  return said([value === undefined ? [] : spotRecord(value, context), diagnostics]);
}

const planned = new Map<Scenario, ReturnType<typeof planFiles>>();

/** The work of a plan: that plan does not rest on any number of the work, so it is made once. */
export function workText(scenario: Scenario, numbers: Numbers): string {
  const plans =
    planned.get(scenario) ?? planFiles({ ...requestOf(scenario, {}), defects: undefined });
  planned.set(scenario, plans);
  const settings = settingsOf(scenario, numbers);
  const { scope } = settings;
  const model = settings.models.work;
  const pace = paceOf(settings);
  const pages = (plans.value ?? []).map(({ result: { plan, survey } }) => {
    const areas = survey.template.panels.map(({ area }) => area);
    const vehicleArea = squareMetres(areas.reduce((sum, area) => sum + area, 0));
    const work = estimateWork(plan, model, { scope, pace, vehicleArea });
    return [workRecord(work, null), workDetailBlocks(work, null), planCautions(work, model)];
  });
  return said(pages);
}

/** What a check on shims comes to. */
export function gaugeText(checks: string, numbers: Numbers): string {
  const file = { name: 'checks.csv', bytes: bytes(checks), sha256: '' };
  const { value } = checkGaugeFiles({
    files: [file],
    settings: settingsOf({}, numbers),
    gauge: undefined,
    permitted: {},
    shimUncertainty: undefined,
    adjust: false,
  });
  return said(value === undefined ? [] : gaugeRecord(value, context));
}

/** What the hours of jobs teach of a shop's pace. */
export function historyText(hours: string, numbers: Numbers): string {
  const file = { name: 'hours.csv', bytes: bytes(hours), sha256: '' };
  const { value, diagnostics } = withHistory(settingsOf({}, numbers), { file, origin: 'flag' });
  return said([value?.hours, diagnostics]);
}

export function methodsText(shop: Keys, numbers: Numbers, shown: readonly string[]): string {
  const sources = methodSources(settingsOf({ shop }, numbers));
  const methods = shown.flatMap((id) => showMethod(id, sources).value ?? []);
  return said([
    methodListRecord(listMethods(sources), [], context),
    methods.map((method) => shownMethodRecord(method, [], context)),
  ]);
}

/** What is unusual in a saloon whose panels grow from a third to more than twice their size, in turn. */
export function unusualText(numbers: Numbers): string {
  const { templateRules } = settingsOf({}, numbers);
  const [saloon] = builtInTemplates.filter(({ id }) => id === 'saloon');
  if (saloon === undefined) throw new Error('the saloon is built in');
  const panels = saloon.panels.map((panel, i) => ({
    ...panel,
    area: squareMetres(panel.area * (0.3 + 0.11 * i)),
    points: panel.points.map((point) => ({ ...point, u: 0.01 * i })),
  }));
  return said(unusualThings({ ...saloon, panels }, builtInTemplates, templateRules));
}

/** What a template file gives under the rules in force: itself, its sheet, what is unusual in it. */
export function templateText(keys: Keys, numbers: Numbers): string {
  const { templateRules } = settingsOf({}, numbers);
  const text = JSON.stringify({ schema: 'leastcut/template/1', ...keys });
  const { value, diagnostics } = readTemplate('own.json', text, builtInTemplates, templateRules);
  const template = value?.template;
  if (template === undefined) return said(diagnostics);
  const sheet = sheetBlocks({ template, panels: template.panels, repeats: 1 }, templateRules);
  return said([template, sheet, unusualThings(template, builtInTemplates, templateRules)]);
}
