import {
  type Diagnostic,
  error,
  hasErrors,
  type Outcome,
  warning,
} from '../../base/diagnostics.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { type PlanFile, readPlanFile } from '../../formats/plan-file.ts';
import { compareBlocks } from '../../report/compare/compare-blocks.ts';
import { compareTable } from '../../report/compare/compare-csv.ts';
import { compareRecord } from '../../report/compare/compare-record.ts';
import { filmRecordText } from '../../report/compare/film-record-file.ts';
import { type CompareResult, compareFiles } from '../../tasks/compare/compare-files.ts';
import { compareObservations } from '../../tasks/compare/compare-observations.ts';
import type { LoadedFile } from '../../tasks/read/read-request.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { type Answer, type Command, failed, type World } from '../command.ts';
import { utf8Text } from '../files/utf8-text.ts';
import { loadGaugeFile, loadSurveyInputs } from '../load/load-gauge.ts';
import { type Inputs, loadOptional, surveyRequest } from '../load/load-inputs.ts';
import { formats } from '../options/output-specs.ts';
import { readingOptions, type TypedOptions } from '../options.ts';
import { pageOptions } from '../page-options.ts';
import { keptObservations, ratesOutProblem } from '../rates-out.ts';
import { version } from '../version.ts';

export const compareCommand: Command = {
  name: 'compare',
  summary: 'say what came off between readings, what is left, go on or stop',
  operands: '<before.csv> <after.csv …>',
  options: [
    'plan',
    'worked',
    'spots',
    'marked',
    'template',
    'job',
    'filmRecord',
    'record',
    'date',
    'gloss',
    'shop',
    'gauge',
    'gaugeAfter',
    'rates',
    'ratesOut',
    'vehicle',
    'panel',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    'check',
    ...readingOptions,
  ],
  formats,
  examples: [
    'leastcut compare samples/sound-saloon/readings.csv samples/sound-saloon/after.csv',
    'leastcut compare samples/sound-saloon/readings.csv samples/sound-saloon/after.csv --marked --job samples/sound-saloon/job.json --format csv',
    'leastcut compare samples/sound-saloon/readings.csv samples/sound-saloon/after.csv --gloss samples/sound-saloon/gloss.csv --format csv',
  ],
  run: async (operands, options, world) => {
    const inputs = await loadSurveyInputs(operands, options, world);
    const [after, plan, worked, gloss] = await loadBeside(options, world);
    const loaded = told([inputs, after, plan, worked, gloss]);
    if (inputs.value === undefined || hasErrors(loaded)) return failed(loaded);
    const unwritable = recordProblem(options);
    if (unwritable !== undefined) return failed([...loaded, unwritable]);
    const { settings, filmRecord } = inputs.value;
    const { value, diagnostics: found } = compareFiles({
      ...surveyRequest(inputs.value, options),
      settingsAfter: after.value?.settings ?? settings,
      gauges: await gaugesOf(settings, after.value?.settings, world),
      marked: options.marked ?? false,
      plan: plan.value?.plan,
      planFile: plan.value?.file,
      workedFile: worked.value,
      gloss: gloss.value,
      recording: options.record !== undefined,
      date: options.date,
    });
    const diagnostics = [...loaded, ...found, ...earlierVisit(options, filmRecord)];
    if (value === undefined || hasErrors(diagnostics)) return failed(diagnostics);
    const lacking = ratesProblem(value, options);
    if (lacking !== undefined) return failed([...diagnostics, lacking]);
    return {
      pages: () => [compareBlocks(value, pageOptions(settings, options))],
      records: () => [compareRecord(value, { version, diagnostics })],
      table: () => compareTable(value),
      files: [
        ...recordFiles(value, inputs.value, options),
        ...ratesFiles(value, settings, options),
      ],
      diagnostics,
      color: settings.color,
      answersNo: [options.check === true && value.panels.some(({ verdict }) => verdict === 'stop')],
    };
  },
};

/** The gauge of the earlier readings; that of the later ones where it is another. */
async function gaugesOf(before: Settings, after: Settings | undefined, world: World) {
  const gaugeOf = async (settings: Settings) => (await loadGaugeFile(settings, world)).value;
  return {
    before: await gaugeOf(before),
    after: after === undefined ? undefined : await gaugeOf(after),
  };
}

/** What several loads had to say, each thing once: two gauges share all other files. */
const told = (parts: readonly Outcome<unknown>[]): readonly Diagnostic[] => {
  const all = parts.flatMap(({ diagnostics }) => diagnostics);
  return [...new Map(all.map((one) => [JSON.stringify(one), one])).values()];
};

/** What is known besides the readings and what a survey of them takes. */
const loadBeside = (options: TypedOptions, world: World) =>
  Promise.all([
    loadLater(options, world),
    loadPlan(options.plan, world),
    loadWorked(options, world),
    loadOptional(options.gloss, world),
  ]);

/** The inputs by the gauge that took the later readings, where it is another. */
const loadLater = async (options: TypedOptions, world: World): Promise<Outcome<Inputs>> =>
  options.gaugeAfter === undefined
    ? { diagnostics: [] }
    : loadSurveyInputs([], { ...options, gauge: options.gaugeAfter }, world);

/** Sets are those of a plan. */
const loadWorked = async (
  { plan, worked }: TypedOptions,
  world: World,
): Promise<Outcome<LoadedFile>> =>
  worked !== undefined && plan === undefined
    ? {
        diagnostics: [
          error('usage-option-value', '--worked needs the plan whose sets were worked', {
            hint: 'add --plan plan.json, as leastcut plan --format json writes it',
          }),
        ],
      }
    : loadOptional(worked, world);

type LoadedPlan = { readonly plan: Placed<PlanFile>; readonly file: LoadedFile };

async function loadPlan(name: string | undefined, world: World): Promise<Outcome<LoadedPlan>> {
  const { value: file, diagnostics } = await loadOptional(name, world);
  if (file === undefined) return { diagnostics };
  const text = utf8Text(file);
  if (text.value === undefined) return { diagnostics: text.diagnostics };
  const { value: plan, diagnostics: found } = readPlanFile(file.name, text.value);
  return plan === undefined
    ? { diagnostics: found }
    : { value: { plan, file }, diagnostics: found };
}

/** What was worked stands in the plan: without it nobody knows what took the film. */
const ratesProblem = (
  { vehicle, planned }: CompareResult,
  options: TypedOptions,
): Diagnostic | undefined =>
  options.ratesOut !== undefined && !planned
    ? error('usage-option-value', '--rates-out needs the plan that was worked to', {
        hint: 'add --plan plan.json, as leastcut plan --format json writes it',
      })
    : ratesOutProblem(options, vehicle);

/** A record is of a day. */
const recordProblem = ({ record, date }: TypedOptions): Diagnostic | undefined =>
  record !== undefined && date === undefined
    ? error('usage-option-value', '--record needs the day of the visit', {
        hint: 'add --date 2026-03-31, or --date today',
      })
    : undefined;

/** A visit of a day before the last on record: the visits keep the order of their days. */
function earlierVisit(
  { record, date }: TypedOptions,
  named: Inputs['filmRecord'],
): readonly Diagnostic[] {
  const days = (named?.value.file.visits ?? []).map((visit) => visit.date ?? '');
  const last = days.toSorted().at(-1) ?? '';
  return record === undefined || date === undefined || named === undefined || date >= last
    ? []
    : [
        warning(
          'compare-visit-earlier',
          `the visit of ${date} is before the last on the record, ${last}: it is put in by its day`,
          {
            at: named.placeOf(['visits', days.indexOf(last), 'date']),
            hint: 'if the day is wrong, correct --date and write the record again',
          },
        ),
      ];
}

function ratesFiles(
  result: CompareResult,
  settings: Settings,
  options: TypedOptions,
): NonNullable<Answer['files']> {
  const { vehicle } = result;
  const kept = keptObservations(settings, options, (date) =>
    vehicle === null ? [] : compareObservations(result, { date, vehicle }),
  );
  return kept?.files ?? [];
}

const recordFiles = (
  result: CompareResult,
  { filmRecord }: Inputs,
  { record, date }: TypedOptions,
): NonNullable<Answer['files']> =>
  record === undefined || date === undefined
    ? []
    : [
        {
          path: record,
          text: filmRecordText(result, date, filmRecord?.value),
          told: `film record written; "film_record": ${JSON.stringify(record)} in the job file hands it to the next survey and plan`,
        },
      ];
