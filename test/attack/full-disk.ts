/**
 * A disk of a few kilobytes, less and less of it free: every form of output into a file of it, and by a
 * shell's redirection. Either all of it is there and the exit code is 0, or the exit code is 73; what was
 * asked for with -o is then not there at all, and nothing is left on the disk.
 *
 * The disk is a file system in memory, which only root may mount; who may not gets the limit on the size
 * of a file instead.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { type Run, runCommand } from '../cli/run-command.ts';
import type { Attack, AttackSetup } from './attack.ts';

const forms = ['text', 'json', 'csv', 'html', 'md'];
const kilobytes = [4, 16, 64, 256];
const wordsOf = (form: string): string => `plan samples/older-coupe/readings.csv --format ${form}`;

type Disk = {
  readonly kind: string;
  readonly folder: string;
  /** Put before a command line. */
  readonly before: string;
  readonly remove: () => void;
};

function diskOf(folder: string, kb: number): Disk {
  const at = join(folder, 'disk');
  mkdirSync(at, { recursive: true });
  const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', `size=${kb}k`, 'leastcut-attack', at]);
  return mounted.status === 0
    ? { kind: 'a full disk', folder: at, before: '', remove: () => void spawnSync('umount', [at]) }
    : {
        ...{ kind: 'the limit on the size of a file', folder: at },
        ...{ before: `ulimit -f ${kb};`, remove: () => rmSync(at, { recursive: true }) },
      };
}

type Filling = { readonly form: string; readonly wanted: string; readonly direct: boolean };

async function fill(setup: AttackSetup, disk: Disk, { form, wanted, direct }: Filling) {
  const out = join(disk.folder, `plan.${form}`);
  const line = `${disk.before} ${leastcut} ${wordsOf(form)} ${direct ? '-o' : '>'} ${out}`;
  const { code, err } = await runLine(setup, line);
  const text = existsSync(out) ? readFileSync(out, 'utf8') : undefined;
  const left = readdirSync(disk.folder).filter((name) => name !== `plan.${form}`);
  rmSync(out, { force: true });
  const where = `${form} ${direct ? 'with -o' : 'redirected'}`;
  const faults = [
    ...(code === 0 && text !== wanted ? [`${where}: exit 0 and not all of it`] : []),
    ...(code !== 0 && code !== 73 ? [`${where}: exit ${code}`] : []),
    ...(code === 73 && !err.includes('[output-unwritable]') ? [`${where}: 73 without why`] : []),
    ...(code === 73 && direct && text !== undefined ? [`${where}: half of it is there`] : []),
    ...(left.length > 0 ? [`${where}: ${left.join(', ')} is left`] : []),
  ];
  return { code, faults };
}

const leastcut = '"$NODE" "$PROGRAM"';

const runLine = ({ program, root }: AttackSetup, line: string): Promise<Run> =>
  runCommand('bash', ['--norc', '-c', line], {
    cwd: root,
    env: { NODE: process.execPath, PROGRAM: program },
  });

/** What stands in each form where there is room. */
async function wholeOutputs(setup: AttackSetup): Promise<readonly (readonly [string, string])[]> {
  const outputs: (readonly [string, string])[] = [];
  for (const form of forms) {
    const { code, out, err } = await runLine(setup, `${leastcut} ${wordsOf(form)}`);
    if (code !== 0) throw new Error(`${form}: exit ${code} with room on the disk: ${err}`);
    outputs.push([form, out]);
  }
  return outputs;
}

export const fullDisk: Attack = {
  name: 'full-disk',
  claim: 'an output cut short that is called done, or litter on a full disk',
  run: async (setup) => {
    const runs: Awaited<ReturnType<typeof fill>>[] = [];
    const outputs = await wholeOutputs(setup);
    let kind = '';
    for (const kb of kilobytes) {
      const disk = diskOf(setup.folder, kb);
      kind = disk.kind;
      for (const [form, wanted] of outputs) {
        for (const direct of [true, false])
          runs.push(await fill(setup, disk, { form, wanted, direct }));
      }
      disk.remove();
    }
    const full = runs.filter(({ code }) => code === 73).length;
    return {
      figure: `${kind}: ${runs.length} runs, ${full} found no room and ${runs.length - full} did`,
      faults: runs.flatMap(({ faults }) => faults),
    };
  },
};
