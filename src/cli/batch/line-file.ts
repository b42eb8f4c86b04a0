/**
 * A file that grows by whole lines under the name `OUT.part`, and becomes OUT when all are there. What
 * was killed half way leaves its lines behind, the last perhaps torn. A pipe or a device, which nothing
 * may take the place of, is written directly.
 */
import { type FileHandle, open, rename, truncate } from 'node:fs/promises';
import { statOrNothing } from '../files/file-status.ts';
import { fileBehind } from '../files/output-files.ts';
import { readerHasGone } from '../files/system-code.ts';

export const partName = async (out: string): Promise<string> => `${await fileBehind(out)}.part`;

export type LineFile = {
  /** False once nobody reads any more. */
  readonly add: (line: string | Uint8Array) => Promise<boolean>;
  readonly finish: () => Promise<void>;
  /** Leaves what is written under its temporary name, which it gives. */
  readonly leave: () => Promise<string>;
};

/** Goes on behind the first `keep` bytes of what is there. */
export async function openLineFile(out: string, keep: number): Promise<LineFile> {
  const isReplaced = statOrNothing(out)?.isFile() ?? true;
  const path = isReplaced ? await partName(out) : out;
  if (keep > 0) await truncate(path, keep);
  const handle: FileHandle = await open(path, keep > 0 ? 'a' : 'w');
  return {
    add: async (line) => {
      try {
        await handle.appendFile(line);
        return true;
      } catch (problem) {
        if (readerHasGone(problem)) return false;
        throw problem;
      }
    },
    finish: async () => {
      if (isReplaced) await handle.sync();
      await handle.close();
      if (isReplaced) await rename(path, await fileBehind(out));
    },
    leave: async () => {
      await handle.close();
      return path;
    },
  };
}
