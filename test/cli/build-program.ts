/** The program as `npm run build` makes it, in a folder of its own: nobody else's build replaces it meanwhile. */
import { execFileSync } from 'node:child_process';
import { cpSync } from 'node:fs';
import { join } from 'node:path';

/** Gives the path of the program to run. */
export function buildProgram(root: string, folder: string): string {
  execFileSync(process.execPath, [join(root, '.build.mjs'), join(folder, 'dist')], {
    stdio: 'inherit',
  });
  cpSync(join(root, 'bin'), join(folder, 'bin'), { recursive: true });
  cpSync(join(root, 'package.json'), join(folder, 'package.json'));
  return join(folder, 'bin/leastcut.js');
}
