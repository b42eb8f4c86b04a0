/** Settings files as they stand, each by the kind it says it is; nothing is computed from them. */
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import { checkSettingsFile } from '../../formats/check-file.ts';
import type { FileKindName } from '../../formats/file-kinds.ts';
import { withoutHome } from './doctor.ts';

export type CheckedFile = {
  readonly file: string;
  readonly sha256: string;
  readonly kind: FileKindName;
  /** False where a warning speaks of it: it can be read, and is not to be relied on as it stands. */
  readonly isSound: boolean;
};

export type FileText = { readonly name: string; readonly sha256: string; readonly text: string };

/** All of them, where none holds an error; else every problem of every file. */
export function checkFiles(
  files: readonly FileText[],
  home: string,
): Outcome<readonly CheckedFile[]> {
  const checked = files.map(({ name, sha256, text }) => {
    const { value: kind, diagnostics } = checkSettingsFile(name, text);
    const file = withoutHome(name, home);
    const isSound = diagnostics.every(({ severity }) => severity !== 'warning');
    return { read: kind === undefined ? [] : [{ file, sha256, kind, isSound }], diagnostics };
  });
  const diagnostics = checked.flatMap((one) => one.diagnostics);
  return hasErrors(diagnostics)
    ? { diagnostics }
    : { value: checked.flatMap(({ read }) => read), diagnostics };
}
