/** The gauge file that is named, by whatever layer, and the settings that go with it. */
import { hasErrors, type Outcome } from '../../base/diagnostics.ts';
import type { Gauge } from '../../formats/gauge.ts';
import type { Placed } from '../../formats/json/placed.ts';
import { type NamedGauge, withGauge } from '../../tasks/settings/gauge-in-use.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import type { World } from '../command.ts';
import type { TypedOptions } from '../options.ts';
import { loadWithHistory } from './load-history.ts';
import { type Inputs, loadFiles, loadInputs } from './load-inputs.ts';
import { loadWithRates } from './load-rates.ts';
import { namedFile, type Reader, readNamed } from './named-file.ts';

/** The inputs of a command that computes from readings: by what is known of the gauge that took them. */
export async function loadSurveyInputs(
  operands: readonly string[],
  options: TypedOptions,
  world: World,
): Promise<Outcome<Inputs>> {
  const gauge = await loadFiles(operands, world);
  const grounds = await world.once('grounds', options, (own) => loadGrounds(options, own));
  const diagnostics = [...gauge.diagnostics, ...grounds.diagnostics];
  return gauge.value === undefined || grounds.value === undefined || hasErrors(diagnostics)
    ? { diagnostics }
    : { value: { ...grounds.value, gauge: gauge.value }, diagnostics };
}

/** All but the readings. */
async function loadGrounds(options: TypedOptions, world: World): Promise<Outcome<Inputs>> {
  const inputs = await loadInputs([], options, world);
  if (inputs.value === undefined) return inputs;
  const gauge = await loadGaugeFile(inputs.value.settings, world);
  const diagnostics = [...inputs.diagnostics, ...gauge.diagnostics];
  if (hasErrors(diagnostics)) return { diagnostics };
  const hours = await loadWithHistory(inputs.value.settings, world);
  if (hours.value === undefined) return { diagnostics: [...diagnostics, ...hours.diagnostics] };
  const rates = await loadWithRates(hours.value, world);
  const before = [...diagnostics, ...hours.diagnostics, ...rates.diagnostics];
  if (rates.value === undefined) return { diagnostics: before };
  const settings = withGauge(rates.value, gauge.value);
  const all = [...before, ...settings.diagnostics];
  return settings.value === undefined
    ? { diagnostics: all }
    : { value: { ...inputs.value, settings: settings.value }, diagnostics: all };
}

/** Nothing where none is named. */
export async function loadGaugeFile(
  { gauge }: Pick<Settings, 'gauge'>,
  world: World,
): Promise<Outcome<NamedGauge>> {
  if (gauge === undefined) return { diagnostics: [] };
  const { value: file, diagnostics } = await readNamed(gauge, world, readGaugeFile);
  if (file === undefined) return { diagnostics };
  const { origin } = gauge;
  return { value: { file, name: namedFile(gauge).shown, origin }, diagnostics };
}

const readGaugeFile: Reader<Placed<Gauge>> = async (file, text) =>
  (await import('../../formats/gauge.ts')).readGauge(file, text);
