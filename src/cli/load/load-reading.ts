/** How the user wants files of readings to be read: flags, the environment, files that they name. */
import { type Diagnostic, error, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { usualLimits } from '../../intake/bytes/limits.ts';
import type { IntakeOptions } from '../../intake/read-gauge-file.ts';
import type { LoadedFile } from '../../tasks/read/read-request.ts';
import type { AsDecided, TypedReading } from '../../tasks/read/reading-rules.ts';
import type { World } from '../command.ts';
import { utf8Text } from '../files/utf8-text.ts';
import type { OptionName, TypedOptions } from '../options.ts';
import { typedColumns } from './typed-columns.ts';

export type ReadingChoices = {
  /** What holds where neither a flag nor a decision says anything. */
  readonly usual: Partial<IntakeOptions>;
  readonly typed: TypedReading;
  readonly decided: AsDecided | undefined;
};

export async function loadReadingChoices(
  options: TypedOptions,
  world: World,
): Promise<Outcome<ReadingChoices>> {
  const columns = typedColumns(options.columns ?? []);
  const [panelNames, decided] = await Promise.all([
    loadPanelNames(options.panelNames ?? [], world),
    loadDecided(options.asDecided, world),
  ]);
  const diagnostics = [columns, panelNames, decided].flatMap((part) => part.diagnostics);
  if (hasErrors(diagnostics)) return { diagnostics };
  const { encoding, delimiter, decimal, layout, headerLine, readingUnit: unit } = options;
  const own = { encoding, delimiter, decimal, layout, headerLine, unit };
  const isTyped = (name: string): boolean =>
    !world.fromEnvironment.has((name === 'unit' ? 'readingUnit' : name) as OptionName);
  const value = {
    usual: {
      ...picked(own, (name) => name !== 'unit' && !isTyped(name)),
      limits: {
        longestRow: options.longestRow ?? usualLimits.longestRow,
        mostColumns: options.mostColumns ?? usualLimits.mostColumns,
      },
    },
    typed: {
      ...picked(own, isTyped),
      ...given('columns', columns.value),
      ...given('panelNames', panelNames.value),
    },
    decided: decided.value,
  };
  return { value, diagnostics };
}

const picked = (
  values: Readonly<Record<string, unknown>>,
  wanted: (name: string) => boolean,
): Partial<TypedReading> =>
  Object.fromEntries(
    Object.entries(values).filter(([name, value]) => value !== undefined && wanted(name)),
  );

const given = <Name extends string, Value extends { readonly size: number }>(
  name: Name,
  value: Value | undefined,
): Partial<Record<Name, Value>> =>
  value === undefined || value.size === 0 ? {} : ({ [name]: value } as Record<Name, Value>);

/** Pairs as they are typed, and files of them; a later one wins. */
async function loadPanelNames(
  words: readonly string[],
  world: Pick<World, 'load'>,
): Promise<Outcome<ReadonlyMap<string, string>>> {
  const parts = await Promise.all(
    words.map((word) => (word.includes('=') ? typedName(word) : loadNames(word, world))),
  );
  const diagnostics = parts.flatMap((part) => part.diagnostics);
  const value = new Map(parts.flatMap((part) => [...(part.value ?? [])]));
  return hasErrors(diagnostics) ? { diagnostics } : { value, diagnostics };
}

/** `Haube=bonnet`; `=bonnet` names the panel of a bare list of numbers. */
function typedName(word: string): Outcome<ReadonlyMap<string, string>> {
  const at = word.lastIndexOf('=');
  const panel = word.slice(at + 1).trim();
  if (panel !== '') return { value: new Map([[word.slice(0, at).trim(), panel]]), diagnostics: [] };
  const hint = 'write --panel-names Haube=bonnet';
  const message = `"${word}" names no panel behind the =`;
  return { diagnostics: [error('usage-option-value', message, { hint })] };
}

async function loadNames(
  name: string,
  world: Pick<World, 'load'>,
): Promise<Outcome<ReadonlyMap<string, string>>> {
  const { file, diagnostics } = await world.load(name);
  if (file === undefined) return { diagnostics: diagnostics.map(orPair) };
  if (!isJson(file)) {
    return (await import('../../intake/read-panel-names.ts')).readPanelNames(file);
  }
  const text = utf8Text(file);
  if (text.value === undefined) return { diagnostics: text.diagnostics };
  const { readPanelNamesJson } = await import('../../formats/panel-names.ts');
  const { value, diagnostics: told } = readPanelNamesJson(name, text.value);
  return value === undefined ? { diagnostics: told } : { value: value.value, diagnostics: told };
}

/** A name of a panel without its = is taken for a file, which is then not there. */
const orPair = (diagnostic: Diagnostic): Diagnostic =>
  diagnostic.code === 'file-missing'
    ? { ...diagnostic, hint: 'check the path; a name itself is typed as Haube=bonnet' }
    : diagnostic;

const isJson = ({ bytes }: LoadedFile): boolean =>
  new TextDecoder().decode(bytes.subarray(0, 1000)).trimStart().startsWith('{');

async function loadDecided(
  name: string | undefined,
  world: Pick<World, 'load'>,
): Promise<Outcome<AsDecided>> {
  if (name === undefined) return { diagnostics: [] };
  const { file, diagnostics } = await world.load(name);
  const text = file === undefined ? { diagnostics } : utf8Text(file);
  if (text.value === undefined) return { diagnostics: text.diagnostics };
  const { readDecisions } = await import('../../formats/decisions.ts');
  const { value, diagnostics: told } = readDecisions(name, text.value);
  return value === undefined
    ? { diagnostics: told }
    : { value: { file: name, decisions: value.value }, diagnostics: told };
}
