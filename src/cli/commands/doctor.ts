import { arch, platform } from 'node:process';
import { error, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import {
  checkBlocks,
  checkRecord,
  doctorBlocks,
  doctorRecord,
} from '../../report/start/doctor-pages.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { FileText } from '../../tasks/start/check-files.ts';
import {
  doctor,
  type Machine,
  type SettingsFile,
  type TerminalFacts,
} from '../../tasks/start/doctor.ts';
import { type Answer, type Command, failed, type World } from '../command.ts';
import { STANDARD_OUTPUT, terminalOn } from '../files/standard-output.ts';
import { utf8Text } from '../files/utf8-text.ts';
import { loadSettings } from '../load/load-settings.ts';
import type { SoughtFile } from '../load/settings-files.ts';
import type { TypedOptions } from '../options.ts';
import { pageOptions } from '../page-options.ts';
import { asciiDecision, colourDecision, textWidth } from '../terminal.ts';
import { version } from '../version.ts';

export const doctorCommand: Command = {
  name: 'doctor',
  summary: 'say which settings are in force, from where; check settings files',
  operands: '[file …]',
  filesOf: (operands) => operands,
  options: [
    'template',
    'job',
    'shop',
    'aim',
    'riskPct',
    'floorUm',
    'policy',
    'finish',
    'rates',
    'readingUnit',
  ],
  examples: [
    'leastcut doctor',
    'leastcut doctor --shop samples/shop.json --aim full',
    'leastcut doctor --job samples/sound-saloon/job.json --format json',
    'leastcut doctor samples/shop.json samples/two-door.json',
  ],
  run: async (operands, options, world) => {
    if (operands.length > 0) return checkNamed(operands, options, world);
    const { value, diagnostics } = await loadSettings(options, world);
    if (value === undefined) return failed(diagnostics);
    const { settings, sought } = value;
    const result = doctor({
      machine: machine(),
      terminal: terminalFacts(settings, options, world),
      files: [...namedFiles(options), ...sought.map(soughtFile)],
      settings,
      home: world.surroundings.home,
    });
    return {
      pages: () => [doctorBlocks(result, pageOptions(settings, options))],
      records: () => [doctorRecord(result, diagnostics)],
      diagnostics,
      color: settings.color,
    };
  },
};

const machine = (): Machine => ({
  version,
  node: process.version,
  platform: `${platform} ${arch}`,
  locale: Intl.DateTimeFormat().resolvedOptions().locale,
});

/** Readings and other tables are not settings. */
const TABLE = /\.(csv|tsv|txt)$/i;

/** Named files, by whatever option, as they stand: no settings are looked up for that. */
async function checkNamed(
  operands: readonly string[],
  { job, shop }: TypedOptions,
  world: World,
): Promise<Answer> {
  const names = new Set([...operands, job, shop].flatMap((name) => name ?? []));
  const table = operands.find((name) => TABLE.test(name));
  if (table !== undefined) {
    const hint = `leastcut read ${table} says how a table of readings is read`;
    const message = `doctor checks settings files, which are JSON: "${table}" is a table`;
    return failed([error('usage-option-value', message, { hint })]);
  }
  const texts = await Promise.all([...names].map((name) => loadText(name, world)));
  // What the schemas of all kinds need is loaded for this alone.
  const { checkFiles } = await import('../../tasks/start/check-files.ts');
  const { value: checked, diagnostics } = checkFiles(
    texts.flatMap(({ value }) => value ?? []),
    world.surroundings.home,
  );
  const all = [...texts.flatMap((text) => text.diagnostics), ...diagnostics];
  if (checked === undefined || hasErrors(all)) return failed(all);
  return {
    pages: () => [checkBlocks(checked)],
    records: () => [checkRecord(checked, machine(), all)],
    diagnostics: all,
  };
}

async function loadText(name: string, world: World): Promise<Outcome<FileText>> {
  const { file, diagnostics } = await world.load(name);
  if (file === undefined) return { diagnostics };
  const { value: text, diagnostics: problems } = utf8Text(file);
  return text === undefined
    ? { diagnostics: problems }
    : { value: { name, sha256: file.sha256, text }, diagnostics: [] };
}

const namedFiles = ({ job, shop }: TypedOptions): readonly SettingsFile[] => [
  ...(job === undefined ? [] : [{ kind: 'job' as const, file: job, state: 'named' as const }]),
  ...(shop === undefined ? [] : [{ kind: 'shop' as const, file: shop, state: 'named' as const }]),
];

const soughtFile = ({ kind, shown, found }: SoughtFile): SettingsFile => ({
  kind,
  file: shown,
  state: found ? 'found' : 'not found',
});

function terminalFacts(
  { color }: Settings,
  { out, ascii: typed }: TypedOptions,
  { surroundings: { environment, platform: system } }: World,
): TerminalFacts {
  const stream = out === undefined ? terminalOn(STANDARD_OUTPUT) : {};
  const { colour, why } = colourDecision(color, stream, environment);
  const { width, from } = textWidth(stream, environment);
  const { ascii, why: asciiWhy } = asciiDecision(typed, stream, environment, system);
  return { width, widthFrom: from, colour, colourWhy: why, ascii, asciiWhy };
}
