/**
 * A file that grows by whole lines under the name `OUT.part`, and becomes OUT when all are there. What
 * was killed half way leaves its lines behind, the last perhaps torn.
 */
import { type FileHandle, open, rename, truncate } from 'node:fs/promises';
import { type Diagnostic, error } from '../../base/diagnostics.ts';

export const partName = (out: string): string => `${out}.part`;

export type LineFile = {
  readonly add: (line: string) => Promise<void>;
  readonly finish: () => Promise<void>;
  /** Leaves what is written under its temporary name. */
  readonly leave: () => Promise<void>;
};

/** Goes on behind the first `keep` bytes of what is there. */
export async function openLineFile(out: string, keep: number): Promise<LineFile> {
  const path = partName(out);
  if (keep > 0) await truncate(path, keep);
  const handle: FileHandle = await open(path, keep > 0 ? 'a' : 'w');
  return {
    add: async (line) => {
      await handle.appendFile(line);
    },
    finish: async () => {
      await handle.sync();
      await handle.close();
      await rename(path, out);
    },
    leave: () => handle.close(),
  };
}

export const cannotWrite = (out: string, problem: unknown): Diagnostic => {
  const code = problem instanceof Error && 'code' in problem ? String(problem.code) : '';
  return error('output-unwritable', `"${out}" cannot be written (${code})`, {
    at: { file: out },
    hint: 'check the folder, its permissions and the room on the disk',
  });
};
