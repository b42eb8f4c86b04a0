/**
 * The table of a command on a long input, in one pass: the rows of a vehicle are worked out as soon as it
 * is read, and their text is held, for it is small. Nothing goes out before all was read, and the memory in
 * use grows with that text alone.
 */
import { found, hasErrors } from '../base/diagnostics.ts';
import { createFindings } from '../intake/findings.ts';
import type { LongPart } from '../intake/read-long-file.ts';
import { renderCsvRow } from '../render/csv.ts';
import type { LoadedFile } from '../tasks/read/read-request.ts';
import { withFields } from './chosen-fields.ts';
import type { Chunks } from './chunks.ts';
import type { Answer, Command, World } from './command.ts';
import { partsOf } from './long-input.ts';
import type { TypedOptions } from './options.ts';
import { intakeByVehicle, onceEach, partWorlds } from './vehicle-parts.ts';

/** Undefined where the input is to be read whole: so it is where anything is wrong with it. */
export async function tableByVehicle(
  command: Command,
  { name, chunks }: { readonly name: string; readonly chunks: Chunks },
  options: TypedOptions,
  world: World,
): Promise<Answer | undefined> {
  const intake = await intakeByVehicle(options, world);
  if (intake === undefined) return undefined;
  const findings = createFindings(name);
  const tell = onceEach(name, findings);
  const worldOf = partWorlds(world);
  const written: string[] = [];
  for await (const part of partsOf(name, intake, chunks)) {
    if (part === undefined) return undefined;
    const own = worldOf(partFile(name, part));
    const { table, diagnostics } = withFields(await command.run([name], options, own), options);
    if (table === undefined || hasErrors(diagnostics)) return undefined;
    tell(diagnostics);
    const { columns, rows } = table();
    written.push((written.length === 0 ? [columns, ...rows] : rows).map(renderCsvRow).join(''));
  }
  const nothing = (): readonly never[] => [];
  const csv = written.join('');
  return { pages: nothing, records: nothing, csv, diagnostics: findings.list() };
}

const partFile = (name: string, part: LongPart): LoadedFile => ({
  name,
  bytes: new Uint8Array(),
  get sha256(): string {
    throw new Error('a table does not tell the checksum of its input');
  },
  piece: part.piece,
  read: found(part, part.diagnostics),
});
