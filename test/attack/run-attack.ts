/**
 * `npm run attack [-- --only kills,labels] [--n 100]`: what is done to the built program on purpose, and
 * what came of it. `NODES=/path/to/node22:/path/to/node24` adds versions of Node to `same-bytes`.
 *
 * Each attack repeats something `--n` times or takes that many of a list; 100 unless said.
 */
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import { parseArgs } from 'node:util';
import { buildProgram } from '../cli/build-program.ts';
import type { Attack, AttackSetup } from './attack.ts';
import { fullDisk } from './full-disk.ts';
import { kills } from './kills.ts';
import { labels } from './labels-attack.ts';
import { sameBytes } from './same-bytes.ts';
import { settingsFiles } from './settings-files-attack.ts';

const attacks: readonly Attack[] = [settingsFiles, fullDisk, kills, labels, sameBytes];

/** True where nothing went wrong. */
async function carryOut({ name, claim, run }: Attack, setup: AttackSetup): Promise<boolean> {
  const folder = join(setup.folder, name);
  mkdirSync(folder);
  const began = Date.now();
  const { figure, faults } = await run({ ...setup, folder });
  const seconds = ((Date.now() - began) / 1000).toFixed(0);
  console.log(`${name}: ${figure}: ${faults.length} times ${claim} (${seconds} s)`);
  for (const fault of faults.slice(0, 20)) console.log(`  ${fault}`);
  return faults.length === 0;
}

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      only: { type: 'string', default: attacks.map(({ name }) => name).join(',') },
      n: { type: 'string', default: '100' },
    },
  });
  const asked = values.only.split(',');
  const unknown = asked.filter((one) => !attacks.some(({ name }) => name === one));
  if (unknown.length > 0) throw new Error(`no such attack: ${unknown.join(', ')}`);
  const folder = mkdtempSync(join(tmpdir(), 'leastcut-attack-'));
  const root = process.cwd();
  const nodes = (process.env['NODES'] ?? '').split(delimiter).filter((path) => path !== '');
  try {
    const program = buildProgram(root, join(folder, 'program'));
    const setup = { program, root, folder, times: Number(values.n), nodes };
    for (const attack of attacks.filter(({ name }) => asked.includes(name))) {
      if (!(await carryOut(attack, setup))) process.exitCode = 1;
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

await main();
