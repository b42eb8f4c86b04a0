/** Writes the manual page into a folder. A step of the build; no command loads it. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { commands } from '../commands.ts';
import { manPage } from '../help/man-page.ts';
import { offersOf } from '../help/offers.ts';
import { version } from '../version.ts';

const [folder = 'dist/man'] = process.argv.slice(2);

const loaded = await Promise.all(commands.map(({ load }) => load()));
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'leastcut.1'), manPage(loaded.map(offersOf), version));
