/**
 * The same command gives the same bytes on standard output and the same exit code, again, in other
 * locales and time zones, by other versions of Node, and with the prototypes of its objects shut.
 *
 * The commands are those of `test/cases`, batches by two workers among them. On standard error Node
 * itself may say that a flag is an experiment.
 */
import { mkdtempSync } from 'node:fs';
import { basename, join } from 'node:path';
import { caseNames, commandOfCase } from '../cli/case-command.ts';
import { type Run, runCommand } from '../cli/run-command.ts';
import type { Attack, AttackSetup } from './attack.ts';
import { sideBySide } from './side-by-side.ts';
import { locales, nothingSaid, type Surrounding, shutPrototypes } from './surroundings.ts';

type Variant = Surrounding & { readonly node: string };

const variantsOf = (nodes: readonly string[]): readonly Variant[] => {
  const own = { node: process.execPath };
  return [
    ...[nothingSaid, ...locales, ...shutPrototypes].map((one) => ({ ...one, ...own })),
    ...nodes.flatMap((node, i) =>
      [nothingSaid, locales[(i + 1) % locales.length] ?? nothingSaid].map((one) => ({
        ...one,
        name: `${one.name}, by ${node}`,
        node,
      })),
    ),
  ];
};

/** What `doctor` says of Node and the locale is theirs to say, and temporary folders are named alike. */
async function runCase(
  { program, root, folder }: AttackSetup,
  name: string,
  { node, flags, env }: Variant,
): Promise<Pick<Run, 'code' | 'out'>> {
  const tmp = mkdtempSync(join(folder, 'run-'));
  const command = commandOfCase(join(root, 'test/cases', name), root, tmp);
  const { code, out } = await runCommand(node, [...flags, program, ...command.words], {
    cwd: root,
    env: { ...env, ...command.env },
    stdin: command.stdin,
  });
  return {
    code,
    out: out.replaceAll(tmp, basename(folder)).replaceAll(/^(?:Node|Locale): .*$/gm, ''),
  };
}

export const sameBytes: Attack = {
  name: 'same-bytes',
  claim: 'other bytes by locale, time zone, version of Node, or from one run to the next',
  run: async (setup) => {
    const all = caseNames(join(setup.root, 'test/cases'));
    const step = Math.max(1, Math.floor(all.length / setup.times));
    const names = all.filter((_, i) => i % step === 0);
    const variants = variantsOf(setup.nodes);
    const faults = await sideBySide(names, 2, async (name) => {
      const plain = { ...nothingSaid, node: process.execPath };
      const wanted = await runCase(setup, name, plain);
      const found: string[] = [];
      for (const variant of variants) {
        const { code, out } = await runCase(setup, name, variant);
        if (code !== wanted.code || out !== wanted.out) found.push(`${name}: ${variant.name}`);
      }
      return found;
    });
    return {
      figure: `${names.length} commands in ${variants.length} surroundings beside the first run (${setup.nodes.length} further versions of Node)`,
      faults: faults.flat(),
    };
  },
};
