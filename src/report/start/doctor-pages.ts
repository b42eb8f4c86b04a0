/** The doctor's findings for people and for machines. */
import type { Diagnostic } from '../../base/diagnostics.ts';
import { isOwn } from '../../tasks/settings/effective-settings.ts';
import type { CheckedFile } from '../../tasks/start/check-files.ts';
import type { DoctorResult, Machine } from '../../tasks/start/doctor.ts';
import { envelope, settingRecord } from '../envelope.ts';
import { type Block, gap, list, type MachineRecord, paragraph, title } from '../model.ts';
import { settingsList } from '../settings-list.ts';

export function doctorBlocks(result: DoctorResult, verbose: boolean): readonly Block[] {
  const { machine, terminal, files, settings, numbers, changedNumbers } = result;
  const asBuiltIn = numbers.length - changedNumbers;
  return [
    title(`leastcut ${machine.version}`),
    paragraph('Node', `${machine.node} on ${machine.platform}`),
    paragraph('Locale', `${machine.locale}; no figure depends on it`),
    paragraph(
      'Output',
      `${terminal.width} columns (${terminal.widthFrom}), ${terminal.colour ? 'in colour' : 'without colour'}: ${terminal.colourWhy}; ${terminal.ascii ? 'in ASCII' : 'in Unicode'}: ${terminal.asciiWhy}`,
    ),
    gap,
    list(
      'Settings files, the first that speaks wins',
      files.map(({ kind, file, state }) => `${kind}: ${file}, ${state}`),
    ),
    settingsList('Settings in force', settings),
    ...(verbose
      ? [settingsList('Numbers of the model', numbers)]
      : [
          ...(changedNumbers === 0
            ? []
            : [settingsList('Numbers of the model that are changed', numbers.filter(isOwn))]),
          paragraph(
            null,
            `${asBuiltIn} numbers of the model are as built in: -v lists them, leastcut explain says what each means.`,
          ),
        ]),
  ];
}

/** `leastcut/doctor/1`. */
export const doctorRecord = (
  { machine, terminal, files, settings, numbers }: DoctorResult,
  diagnostics: readonly Diagnostic[],
): MachineRecord => ({
  ...head(machine, [], diagnostics),
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
  checked: readonly CheckedFile[],
  diagnostics: readonly Diagnostic[],
): MachineRecord => ({
  ...envelope(
    'doctor',
    {
      vehicle: null,
      inputs: checked.map(({ file, sha256 }) => ({ file, sha256, decisions: null })),
      assumptions: [],
    },
    { version, diagnostics },
  ),
  node,
  platform,
  locale,
});

/** Files that hold no mistake. */
export const checkBlocks = (checked: readonly CheckedFile[]): readonly Block[] => [
  list(
    'Sound',
    checked.map(({ file, kind }) => `${file}: ${kind.replace('-', ' ')} file`),
  ),
];

/** The same record where nothing but files was looked at. */
export const checkRecord = (
  checked: readonly CheckedFile[],
  machine: Machine,
  diagnostics: readonly Diagnostic[],
): MachineRecord => ({
  ...head(machine, checked, diagnostics),
  terminal: null,
  files: [],
  settings: [],
  checked: checked.map(({ file, kind }) => ({ file, kind })),
});
