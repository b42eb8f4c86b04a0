/** A file that a flag, a variable or a settings file names: where it lies, and by what name it is told. */
import { isAbsolute, join } from 'node:path';
import { type Diagnostic, found, type Outcome } from '../../base/diagnostics.ts';
import type { LoadedFile } from '../../tasks/read/read-request.ts';
import type { Located } from '../../tasks/settings/settings-layers.ts';
import type { World } from '../command.ts';
import { utf8Text } from '../files/utf8-text.ts';

export type ShownFile = {
  readonly path: string;
  /** The path as people are shown it. */
  readonly shown: string;
};

export const asTyped = (name: string): ShownFile => ({ path: name, shown: name });

export type NamedFile = Pick<Located<string>, 'value' | 'folder' | 'origin' | 'at'>;

/** The folder of a file that nobody named is private: what such a file names is shown as it stands there. */
export function namedFile({ value, folder, origin }: NamedFile): ShownFile {
  const path = isAbsolute(value) || folder === '' ? value : join(folder, value);
  return { path, shown: origin === 'project' || origin === 'user' ? value : path };
}

type Load = Pick<World, 'load'>;

/** Under the name that is shown. */
export async function loadShown(
  { path, shown }: ShownFile,
  world: Load,
): Promise<Outcome<Pick<LoadedFile, 'name' | 'bytes'>>> {
  const { file, diagnostics } = await world.load(path);
  return file === undefined
    ? { diagnostics: diagnostics.map((one) => shownInstead(one, path, shown)) }
    : found({ name: shown, bytes: file.bytes });
}

const shownInstead = (diagnostic: Diagnostic, path: string, shown: string): Diagnostic => ({
  ...diagnostic,
  message: diagnostic.message.replaceAll(path, shown),
  ...(diagnostic.at === undefined ? {} : { at: { ...diagnostic.at, file: shown } }),
});

export type Reader<T> = (name: string, text: string) => Promise<Outcome<T>>;

export async function readShown<T>(
  shown: ShownFile,
  world: Load,
  read: Reader<T>,
): Promise<Outcome<T>> {
  const file = await loadShown(shown, world);
  if (file.value === undefined) return { diagnostics: file.diagnostics };
  const text = utf8Text(file.value);
  return text.value === undefined
    ? { diagnostics: text.diagnostics }
    : read(file.value.name, text.value);
}

/** Of a file that is not there, the line that names it is to be mended. */
export const toldWhereNamed =
  ({ at }: Pick<NamedFile, 'at'>) =>
  (problem: Diagnostic): Diagnostic =>
    at === undefined || problem.code !== 'file-missing'
      ? problem
      : { ...problem, at, hint: 'mend the path: it is relative to this file' };

export async function readNamed<T>(
  named: NamedFile,
  world: Load,
  read: Reader<T>,
): Promise<Outcome<T>> {
  const outcome = await readShown(namedFile(named), world, read);
  return { ...outcome, diagnostics: outcome.diagnostics.map(toldWhereNamed(named)) };
}
