/**
 * A command on a long input, vehicle by vehicle: each record is written as soon as it is there, and
 * the memory in use does not grow with the file.
 *
 * What is written stays whole records, one a line. If a vehicle late in the file cannot be worked out,
 * those before it stand, a last record tells the diagnostics and has no result, and the exit code is
 * that of the error. The diagnostics of a record are those of its part of the file.
 */
import { type Diagnostic, hasErrors } from '../base/diagnostics.ts';
import { createFindings } from '../intake/findings.ts';
import { renderNdjson } from '../render/json.ts';
import { emptyRecord } from '../report/envelope.ts';
import { type Answer, answerIsNo, type Command, type World } from './command.ts';
import { writeToReader } from './files/standard-output.ts';
import { changedFile, type LongInput, openLongInput } from './long-input.ts';
import type { TypedOptions } from './options.ts';
import { intakeByVehicle, onceEach, partWorlds } from './vehicle-parts.ts';
import { version } from './version.ts';

export type RunOfVehicles = { readonly diagnostics: readonly Diagnostic[]; readonly isNo: boolean };

/** Undefined where nothing was written: the input is short, or is to be read whole. */
export async function runByVehicle(
  command: Command,
  name: string,
  options: TypedOptions,
  world: World,
  noticed: readonly Diagnostic[],
): Promise<RunOfVehicles | undefined> {
  // A file that is written is the old or the new, never half: not record by record.
  if (options.out !== undefined) return undefined;
  const intake = await intakeByVehicle(options, world);
  const input = intake && (await openLongInput(name, intake, world.load));
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
  const worldOf = partWorlds(world);
  for await (const piece of pieces()) {
    if (piece === undefined) {
      yield { records: () => [], diagnostics: [changedFile(name)] };
      return;
    }
    const part = { name, bytes: new Uint8Array(), sha256, piece };
    yield await command.run([name], options, worldOf(part));
  }
}
