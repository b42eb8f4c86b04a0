/** The doctor's findings for people and for machines. */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { isOwn } from '../../tasks/settings/effective-settings.ts';
import type { CheckedFile } from '../../tasks/start/check-files.ts';
import type { DoctorResult, Machine } from '../../tasks/start/doctor.ts';
import { envelope, settingRecord } from '../envelope.ts';
import { joined } from '../facts.ts';
import { type Block, gap, list, type MachineRecord, paragraph, title } from '../model.ts';
import type { PageOptions } from '../page-options.ts';
import { settingsList, settingText } from '../settings-list.ts';

export function doctorBlocks(
  result: DoctorResult,
  { verbose, onPaper = false }: Pick<PageOptions, 'verbose' | 'onPaper'>,
): readonly Block[] {
  const { machine, terminal, files, settings, numbers, changedNumbers } = result;
  const asBuiltIn = numbers.length - changedNumbers;
  return [
    title(`leastcut ${machine.version}`),
    paragraph('Node', `${machine.node} on ${machine.platform}`),
    paragraph('Locale', joined([machine.locale, 'no figure depends on it'], '; ')),
    paragraph(
      'Output',
      joined(
        [
          joined(
            [
              `${terminal.width} columns (${terminal.widthFrom})`,
              `${terminal.colour ? 'in colour' : 'without colour'}: ${terminal.colourWhy}`,
            ],
            ', ',
          ),
          `${terminal.ascii ? 'in ASCII' : 'in Unicode'}: ${terminal.asciiWhy}`,
        ],
        '; ',
      ),
    ),
    gap,
    list(
      'Settings files, the first that speaks wins',
      files.map(({ kind, file, state }) => `${kind}: ${file}, ${state}`),
    ),
    ...inForce(settings, numbers),
    ...(verbose
      ? [settingsList('Numbers of the model', numbers)]
      : [
          ...(changedNumbers === 0
            ? []
            : [settingsList('Numbers of the model that are changed', numbers.filter(isOwn))]),
          paragraph(
            null,
            `${asBuiltIn} numbers of the model are as built in: ${onPaper ? '' : '-v lists them, '}leastcut explain says what each means.`,
          ),
        ]),
  ];
}

/** What somebody set comes first; what is built in is one paragraph, and what is not set says what holds then. */
function inForce(
  settings: DoctorResult['settings'],
  numbers: DoctorResult['numbers'],
): readonly Block[] {
  const own = settings.filter(isOwn);
  const builtIn = settings.filter((one) => !isOwn(one));
  const isSet = ({ value }: DoctorResult['settings'][number]): boolean =>
    settingText(value) !== '–';
  const as = builtIn.filter(isSet).map(({ name, value }) => `${name} ${settingText(value)}`);
  const unset = builtIn
    .filter((one) => !isSet(one))
    .map(({ name }) => `${name}: ${holdsInstead(name, numbers)}`);
  return [
    own.length === 0
      ? paragraph('Settings', 'none is set: all are as built in.')
      : settingsList('Settings in force that somebody set', own),
    gap,
    paragraph('As built in', joined(as, '; ', '.')),
    gap,
    list('Not set, and what holds then', unset),
    gap,
  ];
}

/** What is done where a setting has no value. */
const INSTEAD: Readonly<Record<string, string>> = {
  taken_um: 'earlier work is unknown, and some is allowed for',
  clear_um: 'the clear is reckoned from the total',
  under_um: 'what lies under the clear is reckoned from the total',
  painted_days_ago: 'the paint has long hardened',
  colour_depth: 'no colour asks for more care than another',
  template: 'the one whose panels fit the readings',
  templates: 'the built-in ones',
  gauge: 'not verified',
  rates_file: 'rates as built in',
  order: 'stages in the built-in order',
  history: 'no hours of earlier jobs',
  'prices.currency': 'no price is told',
  'prices.labour_minor_per_h': 'no price is told',
  'prices.tax': 'no price is told',
  reading_unit: 'as the file says',
};

function holdsInstead(name: string, numbers: DoctorResult['numbers']): string {
  if (name !== 'floor_um') return INSTEAD[name] ?? 'nothing is asked for';
  const floor = (id: string): string =>
    settingText(numbers.find((one) => one.name === `film.limits.${id}`)?.value ?? null);
  return `${floor('total_floor_um')}\u00a0µm must stay, of single-stage paint ${floor('total_floor_single_stage_um')}\u00a0µm`;
}

/** `leastcut/doctor/1`. */
export const doctorRecord = (
  { machine, terminal, files, settings, numbers, assumptions }: DoctorResult,
  diagnostics: readonly Diagnostic[],
): MachineRecord => ({
  ...head(machine, { checked: [], assumptions }, diagnostics),
  terminal: {
    width: terminal.width,
    width_from: terminal.widthFrom,
    color: terminal.colour,
    color_why: terminal.colourWhy,
    ascii: terminal.ascii,
    ascii_why: terminal.asciiWhy,
  },
  files,
  settings: [...settings, ...numbers].map(settingRecord),
  checked: [],
});

const head = (
  { version, node, platform, locale }: Machine,
  {
    checked,
    assumptions,
  }: Pick<DoctorResult, 'assumptions'> & { readonly checked: readonly CheckedFile[] },
  diagnostics: readonly Diagnostic[],
): MachineRecord => ({
  ...envelope(
    'doctor',
    {
      vehicle: null,
      inputs: checked.map(({ file, sha256 }) => ({ file, sha256, decisions: null })),
      assumptions,
    },
    { version, diagnostics },
  ),
  node,
  platform,
  locale,
});

/** Files without a mistake, and those of which a warning speaks. */
export function checkBlocks(checked: readonly CheckedFile[]): readonly Block[] {
  const listed = (head: string, files: readonly CheckedFile[]): readonly Block[] =>
    files.length === 0
      ? []
      : [
          list(
            head,
            files.map(({ file, kind }) => `${file}: ${kind.replace('-', ' ')} file`),
          ),
        ];
  return [
    ...listed('Sound', soundOf(checked)),
    ...listed(
      'To look at again, for what the warnings say',
      checked.filter(({ isSound }) => !isSound),
    ),
  ];
}

const soundOf = (checked: readonly CheckedFile[]): readonly CheckedFile[] =>
  checked.filter(({ isSound }) => isSound);

/** The same record where nothing but files was looked at. */
export const checkRecord = (
  checked: readonly CheckedFile[],
  machine: Machine,
  diagnostics: readonly Diagnostic[],
): MachineRecord => ({
  ...head(machine, { checked, assumptions: [] }, diagnostics),
  terminal: null,
  files: [],
  settings: [],
  checked: soundOf(checked).map(({ file, kind }) => ({ file, kind })),
});
