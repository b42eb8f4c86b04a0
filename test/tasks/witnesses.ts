/** Runs of survey, plan, methods and template that between them rest on every number of the model. */
import { squareMetres } from '../../src/base/units.ts';
import { unusualThings } from '../../src/film/unusual-template.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { readJob } from '../../src/formats/job.ts';
import { readTemplate } from '../../src/formats/template.ts';
import { methodListRecord, shownMethodRecord } from '../../src/report/methods-record.ts';
import { planBlocks } from '../../src/report/plan-blocks.ts';
import { planRecord } from '../../src/report/plan-record.ts';
import { spotRecord } from '../../src/report/spot-record.ts';
import { surveyBlocks } from '../../src/report/survey-blocks.ts';
import { surveyRecord } from '../../src/report/survey-record.ts';
import { sheetBlocks } from '../../src/report/template-sheet.ts';
import { listMethods, methodSources, showMethod } from '../../src/tasks/methods.ts';
import { planFiles } from '../../src/tasks/plan-files.ts';
import { resolveSettings, type Settings } from '../../src/tasks/settings.ts';
import { spotFiles } from '../../src/tasks/spot-files.ts';
import {
  type SurveyedVehicle,
  type SurveyFilesRequest,
  surveyFiles,
} from '../../src/tasks/survey-files.ts';
import { type SurveyReport, withHelp } from '../../src/tasks/survey-help.ts';
import { layersOf } from './layers.ts';

type Keys = Readonly<Record<string, unknown>>;
type Numbers = Readonly<Record<string, number>>;

/** Keys of a job and of a shop file, with readings and defects as files hold them. */
export type Scenario = {
  readonly readings: string;
  readonly defects?: string;
  readonly job?: Keys;
  readonly shop?: Keys;
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
  };
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

const withoutList = (settings: Settings): Settings => ({ ...settings, effective: [] });

/** What a file of test spots comes to. */
export function spotText(spots: string, numbers: Numbers): string {
  const settings = settingsOf({}, numbers);
  const file = { name: 'spots.csv', bytes: bytes(spots), sha256: '' };
  const { value, diagnostics } = spotFiles({ files: [file], settings, job: undefined });
  return said([value === undefined ? [] : spotRecord(value, context), diagnostics]);
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
  const sheet = sheetBlocks(template, template.panels, templateRules);
  return said([template, sheet, unusualThings(template, builtInTemplates, templateRules)]);
}
