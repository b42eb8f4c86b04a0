/** What both ways of going through a long input vehicle by vehicle share. */
import { type Diagnostic, hasErrors } from '../base/diagnostics.ts';
import type { Findings } from '../intake/findings.ts';
import type { IntakeOptions } from '../intake/intake-options.ts';
import type { LoadedFile } from '../tasks/read/read-request.ts';
import { intakeOptions } from '../tasks/read/read-vehicles.ts';
import type { World } from './command.ts';
import { loadInputs, readRequest } from './load/load-inputs.ts';
import type { OptionName, TypedOptions } from './options.ts';

/** Options that say something of one vehicle, or of the input as a whole. */
const acrossVehicles: readonly OptionName[] = [
  'vehicle',
  'job',
  'defects',
  'spots',
  'filmRecord',
  'panelNames',
  'asDecided',
  'decisions',
  'gaugeOut',
];

/** How the input is read; undefined where what was typed is not of each vehicle by itself. */
export async function intakeByVehicle(
  options: TypedOptions,
  world: World,
): Promise<IntakeOptions | undefined> {
  if (acrossVehicles.some((option) => options[option] !== undefined)) return undefined;
  const inputs = await loadInputs([], options, world);
  if (inputs.value === undefined || hasErrors(inputs.diagnostics)) return undefined;
  return intakeOptions(readRequest(inputs.value, options)).value;
}

/** The world in which the input is a part of itself; what follows from the options alone is kept for the next part. */
export function partWorlds(world: World): (part: LoadedFile) => World {
  const kept = new Map<string, Promise<unknown>>();
  const once: World['once'] = (what, _options, make) => {
    const made = kept.get(what) ?? make(world);
    kept.set(what, made);
    return made as ReturnType<typeof make>;
  };
  return (part) => ({
    ...world,
    once,
    load: async (wanted) =>
      wanted === part.name ? { file: part, diagnostics: [] } : world.load(wanted),
  });
}

/** What is said of settings and templates comes with every part of the input, and is told once. */
export function onceEach(
  name: string,
  findings: Findings,
): (diagnostics: readonly Diagnostic[]) => void {
  const told = new Set<string>();
  return (diagnostics) => {
    for (const one of diagnostics) {
      if (one.at?.file !== name) {
        const key = JSON.stringify(one);
        if (told.has(key)) continue;
        told.add(key);
      }
      findings.addAll([one]);
    }
  };
}
