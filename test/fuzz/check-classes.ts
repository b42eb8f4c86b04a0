/** What must hold of a comparison and of a graded class, whatever their files are. */
import type { Diagnostic } from '../../src/base/diagnostics.ts';
import { builtInTemplates } from '../../src/formats/data/templates.ts';
import { readPlanFile } from '../../src/formats/plan-file.ts';
import { readRubric } from '../../src/formats/rubric.ts';
import { renderText } from '../../src/render/text.ts';
import { compareBlocks } from '../../src/report/compare/compare-blocks.ts';
import { compareTable } from '../../src/report/compare/compare-csv.ts';
import { compareRecord } from '../../src/report/compare/compare-record.ts';
import { filmRecordText } from '../../src/report/compare/film-record-file.ts';
import { gradeBlocks } from '../../src/report/grade/grade-blocks.ts';
import { gradeRecord } from '../../src/report/grade/grade-record.ts';
import { gradeSheet } from '../../src/report/grade/grade-sheet.ts';
import { gradeTable } from '../../src/report/grade/grade-table.ts';
import { compareFiles } from '../../src/tasks/compare/compare-files.ts';
import { compareObservations } from '../../src/tasks/compare/compare-observations.ts';
import { gradeFiles } from '../../src/tasks/grade/grade-files.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { slipIn } from './check.ts';
import type { ClassCase } from './class-cases.ts';

const settings = resolveSettings({ typed: {}, job: undefined, shops: [] });
const text = (bytes: Uint8Array | undefined): string => Buffer.from(bytes ?? []).toString('utf8');

/** They speak of what was typed, or of all files together, and so of no place in one. */
const OF_NO_PLACE: readonly string[] = [
  'compare-one-visit',
  'usage-several-vehicles',
  'usage-missing-input',
  'grade-no-trainee',
  'grade-no-consensus',
];

const withoutPlace = (diagnostics: readonly Diagnostic[]): string | undefined => {
  const lost = diagnostics.find(
    ({ severity, code, at }) =>
      severity === 'error' && at?.file === undefined && !OF_NO_PLACE.includes(code),
  );
  return lost === undefined ? undefined : `no place: ${lost.code} ${lost.message}`;
};

type Found = {
  readonly diagnostics: readonly Diagnostic[];
  readonly written: () => readonly unknown[];
};

const named = (files: ClassCase['files']) => files.map((file, i) => ({ ...file, sha256: `${i}` }));
const one = (file: ClassCase['settings']) =>
  file === undefined ? undefined : { ...file, sha256: '' };

const read = {
  files: [],
  templates: builtInTemplates,
  templateId: undefined,
  templateRules: settings.templateRules,
  intake: { plausible: settings.film.measurement },
  vehicle: undefined,
  keepUnknownPanels: false,
};

function compareOf(of: ClassCase): Found {
  const plan =
    of.settings === undefined ? undefined : readPlanFile('plan.json', text(of.settings.bytes));
  const { value, diagnostics } = compareFiles({
    ...read,
    files: named(of.files),
    settings,
    settingsAfter: settings,
    gauges: { before: undefined, after: undefined },
    job: undefined,
    filmRecord: undefined,
    marked: of.marked,
    plan: plan?.value,
    planFile: one(of.settings),
    workedFile: plan?.value === undefined ? undefined : one(of.worked),
    gloss: one(of.gloss),
    panels: [],
    size: undefined,
  } as Parameters<typeof compareFiles>[0]);
  return {
    diagnostics: [...(plan?.diagnostics ?? []), ...diagnostics],
    written: () =>
      value === undefined
        ? []
        : [
            compareRecord(value, { version: '0', diagnostics }),
            compareTable(value),
            filmRecordText(value, '2026-03-31', undefined),
            compareObservations(value, { date: '2026-03-31', vehicle: 'X' }),
            pages([compareBlocks(value, { unit: 'um', verbose: true, drawn: true })]),
            pages([compareBlocks(value, { unit: 'mil', verbose: false })]),
          ],
  };
}

function gradeOf(of: ClassCase): Found {
  const rubric =
    of.settings === undefined ? undefined : readRubric('rubric.json', text(of.settings.bytes));
  const [first, ...others] = named(of.files);
  const { value, diagnostics } = gradeFiles({
    read,
    reference: of.consensus ? undefined : first,
    trainees: of.consensus && first !== undefined ? [first, ...others] : others,
    settings,
    job: undefined,
    rubric:
      rubric?.value === undefined ? undefined : { name: 'rubric.json', value: rubric.value.value },
    gauge: undefined,
    traineeGauges: new Map(),
    marked: of.marked,
    anonymous: of.anonymous,
    trainee: undefined,
  } as Parameters<typeof gradeFiles>[0]);
  const page = { unit: 'um', verbose: true } as const;
  return {
    diagnostics: [...(rubric?.diagnostics ?? []), ...diagnostics],
    written: () =>
      value === undefined
        ? []
        : [
            gradeRecord(value, { version: '0', diagnostics }),
            gradeTable(value),
            pages([gradeBlocks(value, page), gradeBlocks(value, { unit: 'mil', verbose: false })]),
            pages(value.trainees.map((trainee) => gradeSheet(trainee, value, page))),
          ],
  };
}

const pages = (all: readonly Parameters<typeof renderText>[0][]): string =>
  all.map((page) => renderText(page, { width: 80, paint: (said) => said })).join('\n');

/** What is wrong with how a case was taken; nothing if all is well. */
export function faultOfClass(of: ClassCase): string | undefined {
  try {
    const { diagnostics, written } = of.task === 'compare' ? compareOf(of) : gradeOf(of);
    const results = written();
    const refused = diagnostics.some(({ severity }) => severity === 'error');
    if (results.length === 0 && !refused) return 'refused without a word';
    const input = [...of.files, of.settings, of.worked, of.gloss]
      .map((file) => text(file?.bytes) + Buffer.from(file?.bytes ?? []).toString('latin1'))
      .join('\n');
    return withoutPlace(diagnostics) ?? slipIn([results, diagnostics], input);
  } catch (problem) {
    return `threw ${problem instanceof Error ? problem.stack : String(problem)}`;
  }
}
