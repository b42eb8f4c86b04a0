/** The gauge file that is named, by whatever layer, and the settings that go with it. */
import { isAbsolute, join } from 'node:path';
import { hasErrors, type Outcome } from '../base/diagnostics.ts';
import type { Gauge } from '../formats/gauge.ts';
import type { Placed } from '../formats/placed.ts';
import { type NamedGauge, withGauge } from '../tasks/gauge-in-use.ts';
import type { Settings } from '../tasks/settings.ts';
import type { World } from './command.ts';
import { type Inputs, loadInputs } from './load-inputs.ts';
import { readSettingsFile } from './load-settings.ts';
import type { TypedOptions } from './options.ts';

/** The inputs of a command that computes from readings: by what is known of the gauge that took them. */
export async function loadSurveyInputs(
  operands: readonly string[],
  options: TypedOptions,
  world: World,
): Promise<Outcome<Inputs>> {
  const inputs = await loadInputs(operands, options, world);
  if (inputs.value === undefined) return inputs;
  const gauge = await loadGaugeFile(inputs.value.settings, world);
  const diagnostics = [...inputs.diagnostics, ...gauge.diagnostics];
  if (hasErrors(diagnostics)) return { diagnostics };
  const settings = withGauge(inputs.value.settings, gauge.value);
  return settings.value === undefined
    ? { diagnostics: [...diagnostics, ...settings.diagnostics] }
    : {
        value: { ...inputs.value, settings: settings.value },
        diagnostics: [...diagnostics, ...settings.diagnostics],
      };
}

/** Nothing where none is named. */
export async function loadGaugeFile(
  { gauge }: Settings,
  world: World,
): Promise<Outcome<NamedGauge>> {
  if (gauge === undefined) return { diagnostics: [] };
  const { value: name, folder, at, origin } = gauge;
  const path = isAbsolute(name) || folder === '' ? name : join(folder, name);
  // The folder of a file that nobody named is private.
  const shown = origin === 'project' || origin === 'user' ? name : path;
  const { value: file, diagnostics } = await readSettingsFile(path, shown, world, readGaugeFile);
  if (file !== undefined) return { value: { file, name: shown, origin }, diagnostics };
  if (at === undefined) return { diagnostics };
  const hint = 'mend the path: it is relative to this file';
  return {
    diagnostics: diagnostics.map((one) =>
      one.code === 'file-missing'
        ? { ...one, message: one.message.replaceAll(path, shown), at, hint }
        : one,
    ),
  };
}

const readGaugeFile = async (file: string, text: string): Promise<Outcome<Placed<Gauge>>> =>
  (await import('../formats/gauge.ts')).readGauge(file, text);
