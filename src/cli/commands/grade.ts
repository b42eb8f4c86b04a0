import { type Diagnostic, error, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { gradeBlocks } from '../../report/grade/grade-blocks.ts';
import { askedTrainees, gradeRecord } from '../../report/grade/grade-record.ts';
import { gradeSheet } from '../../report/grade/grade-sheet.ts';
import { gradeTable } from '../../report/grade/grade-table.ts';
import { verdictOf } from '../../report/grade/grade-words.ts';
import { gradeFiles } from '../../tasks/grade/grade-files.ts';
import type {
  GradedClass,
  GradeFilesRequest,
  HandedFile,
} from '../../tasks/grade/grade-request.ts';
import type { LoadedFile } from '../../tasks/read/read-request.ts';
import { type Answer, type Command, failed, type World } from '../command.ts';
import { loadGaugeFile } from '../load/load-gauge.ts';
import { loadInputs, readRequest } from '../load/load-inputs.ts';
import { loadRubric, loadTraineeGauges } from '../load/load-rubric.ts';
import { formats } from '../options/output-specs.ts';
import { readingOptions, type TypedOptions } from '../options.ts';
import { pageOptions } from '../page-options.ts';
import { version } from '../version.ts';

export const gradeCommand: Command = {
  name: 'grade',
  summary: 'grade surveys of trainees against a reference, and the whole class',
  operands: '<reference.csv> <trainee.csv …>',
  options: [
    'template',
    'job',
    'shop',
    'gauge',
    'traineeGauge',
    'rubric',
    'consensus',
    'marked',
    'trainee',
    'anonymous',
    'check',
    'vehicle',
    ...readingOptions,
  ],
  formats,
  examples: [
    'leastcut grade samples/class/reference.csv samples/class/anneke.csv samples/class/bram.csv',
    'leastcut grade samples/class/anneke.csv samples/class/bram.csv samples/class/elif.csv --consensus',
    'leastcut grade samples/class/reference.csv samples/class/bram.csv --trainee bram',
  ],
  run: async (operands, options, world) => {
    const request = await loadRequest(operands, options, world);
    if (request.value === undefined) return failed(request.diagnostics);
    const { value, diagnostics: found } = gradeFiles(request.value);
    const diagnostics = [...request.diagnostics, ...found];
    if (value === undefined) return failed(diagnostics);
    const page = pageOptions(request.value.settings, options);
    return {
      pages: () => pagesOf(value, options, page),
      records: () => [gradeRecord(value, { version, diagnostics })],
      table: () => gradeTable(value),
      diagnostics,
      color: request.value.settings.color,
      answersNo: [options.check === true && askedTrainees(value).some(isNo)],
    };
  },
};

const isNo = (trainee: GradedClass['trainees'][number]): boolean => {
  const verdict = verdictOf(trainee);
  const latest = trainee.attempt === trainee.attempts;
  return latest && (verdict === 'unsatisfactory' || verdict === 'not-read');
};

/** The page of the class; sheets where one is asked for, and for print a sheet for each. */
function pagesOf(
  graded: GradedClass,
  { format }: TypedOptions,
  page: Parameters<typeof gradeBlocks>[1],
): ReturnType<Answer['pages']> {
  const sheets = askedTrainees(graded).map((trainee) => gradeSheet(trainee, graded, page));
  if (graded.asked !== null) return sheets;
  const ofClass = gradeBlocks(graded, page);
  return format === 'html' ? [ofClass, ...sheets] : [ofClass];
}

const nobodyToGrade = ({ consensus }: TypedOptions): Diagnostic =>
  consensus === true
    ? error('usage-missing-input', 'a consensus takes the files of several trainees')
    : error('usage-missing-input', 'no file of a trainee is named', {
        hint: 'name the reference first and the files of trainees after it, or add --consensus',
      });

type Loaded = {
  readonly name: string;
  readonly file?: LoadedFile;
  readonly diagnostics: readonly Diagnostic[];
};

const handedFile = ({ name, file, diagnostics }: Loaded): HandedFile =>
  file ?? { name, bytes: new Uint8Array(), sha256: '', notLoaded: diagnostics };

/** One after the other, for a pipe can be read once. */
async function loadInOrder(names: readonly string[], world: World): Promise<readonly Loaded[]> {
  const loaded: Loaded[] = [];
  for (const name of names) loaded.push({ name, ...(await world.load(name)) });
  return loaded;
}

/** Every problem of all the files at once. */
async function loadRequest(
  operands: readonly string[],
  options: TypedOptions,
  world: World,
): Promise<Outcome<GradeFilesRequest>> {
  const loaded = await loadInOrder(operands, world);
  const inputs = await loadInputs([], options, world);
  const [rubric, traineeGauges] = await Promise.all([
    loadRubric(options.rubric, world),
    loadTraineeGauges(options.traineeGauge ?? [], world),
  ]);
  const gauge =
    inputs.value === undefined
      ? { diagnostics: [] }
      : await loadGaugeFile(inputs.value.settings, world);
  const [first, ...others] = loaded;
  // Without a reference nobody is graded; a file of a trainee that is not there costs that trainee the grade alone.
  const needed = options.consensus === true ? [] : [first];
  const diagnostics = [...needed, inputs, rubric, traineeGauges, gauge].flatMap(
    (part) => part?.diagnostics ?? [],
  );
  if (inputs.value === undefined || hasErrors(diagnostics)) return { diagnostics };
  if (operands.length < 2) return { diagnostics: [nobodyToGrade(options)] };
  return {
    value: {
      read: readRequest(inputs.value, options),
      reference: options.consensus === true ? undefined : first?.file,
      trainees: (options.consensus === true ? loaded : others).map(handedFile),
      settings: inputs.value.settings,
      job: inputs.value.job,
      rubric: rubric.value,
      gauge: gauge.value,
      traineeGauges: traineeGauges.value ?? new Map(),
      marked: options.marked ?? false,
      anonymous: options.anonymous ?? false,
      trainee: options.trainee,
    },
    diagnostics,
  };
}
