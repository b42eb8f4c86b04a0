/**
 * A command on a long input, vehicle by vehicle: each record is written as soon as it is there, and
 * the memory in use does not grow with the file.
 *
 * What is written stays whole records, one a line. If a vehicle late in the file cannot be worked out,
 * those before it stand, a last record tells the diagnostics and has no result, and the exit code is
 * that of the error. The diagnostics of a record are those of its part of the file.
 */
import { type Diagnostic, hasErrors } from '../base/diagnostics.ts';
import { createFindings, type Findings } from '../intake/findings.ts';
import { renderNdjson } from '../render/json.ts';
import { emptyRecord } from '../report/envelope.ts';
import { intakeOptions } from '../tasks/read/read-vehicles.ts';
import { type Answer, answerIsNo, type Command, type World } from './command.ts';
import { writeToReader } from './files/standard-output.ts';
import { loadInputs, readRequest } from './load/load-inputs.ts';
import { changedFile, type LongInput, openLongInput } from './long-input.ts';
import type { OptionName, TypedOptions } from './options.ts';
import { version } from './version.ts';

/** Options that say something of one vehicle, or of the input as a whole. */
const acrossVehicles: readonly OptionName[] = [
  'vehicle',
  'job',
  'defects',
  'spots',
  'filmRecord',
  'panelNames',
  'asDecided',
  'decisions',
  'gaugeOut',
  'out',
];

export type RunOfVehicles = { readonly diagnostics: readonly Diagnostic[]; readonly isNo: boolean };

/** Undefined where nothing was written: the input is short, or is to be read whole. */
export async function runByVehicle(
  command: Command,
  name: string,
  options: TypedOptions,
  world: World,
  noticed: readonly Diagnostic[],
): Promise<RunOfVehicles | undefined> {
  if (acrossVehicles.some((option) => options[option] !== undefined)) return undefined;
  const inputs = await loadInputs([], options, world);
  if (inputs.value === undefined || hasErrors(inputs.diagnostics)) return undefined;
  const intake = intakeOptions(readRequest(inputs.value, options));
  if (intake.value === undefined) return undefined;
  const input = await openLongInput(name, intake.value, world.load);
  if (input === undefined) return undefined;
  const findings = createFindings(name);
  findings.addAll(noticed);
  const tell = onceEach(name, findings);
  let isNo = true;
  for await (const answer of answersOf(command, name, options, world, input)) {
    tell(answer.diagnostics);
    isNo &&= answerIsNo(answer);
    const failed = hasErrors(answer.diagnostics);
    const records = failed
      ? [emptyRecord(command.name, { version, diagnostics: answer.diagnostics })]
      : answer.records();
    const goesOn = await writeToReader(renderNdjson(records));
    if (failed || !goesOn) break;
  }
  return { diagnostics: findings.list(), isNo };
}

async function* answersOf(
  command: Command,
  name: string,
  options: TypedOptions,
  world: World,
  { sha256, pieces }: LongInput,
): AsyncIterable<Pick<Answer, 'records' | 'diagnostics' | 'answersNo'>> {
  for await (const piece of pieces()) {
    if (piece === undefined) {
      yield { records: () => [], diagnostics: [changedFile(name)] };
      return;
    }
    const file = { name, bytes: new Uint8Array(), sha256, piece };
    const load: World['load'] = async (wanted) =>
      wanted === name ? { file, diagnostics: [] } : world.load(wanted);
    yield await command.run([name], options, { ...world, load });
  }
}

/** What is said of settings and templates comes with every part of the input, and is told once. */
function onceEach(name: string, findings: Findings): (diagnostics: readonly Diagnostic[]) => void {
  const told = new Set<string>();
  return (diagnostics) => {
    for (const one of diagnostics) {
      if (one.at?.file !== name) {
        const key = JSON.stringify(one);
        if (told.has(key)) continue;
        told.add(key);
      }
      findings.addAll([one]);
    }
  };
}
