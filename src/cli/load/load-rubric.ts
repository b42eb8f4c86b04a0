/** The files that say how a class is graded: the rubric, and gauges of single trainees. */
import { error, hasErrors, type Outcome } from '../../base/diagnostics.ts';
import type { Rubric } from '../../formats/rubric.ts';
import type { NamedGauge } from '../../tasks/settings/gauge-in-use.ts';
import type { World } from '../command.ts';
import { loadGaugeFile } from './load-gauge.ts';
import { asTyped, readShown } from './named-file.ts';

/** Nothing where none is named. */
export async function loadRubric(
  name: string | undefined,
  world: World,
): Promise<Outcome<{ readonly name: string; readonly value: Rubric }>> {
  if (name === undefined) return { diagnostics: [] };
  const { value, diagnostics } = await readShown(asTyped(name), world, async (file, text) =>
    (await import('../../formats/rubric.ts')).readRubric(file, text),
  );
  return value === undefined
    ? { diagnostics }
    : { value: { name, value: value.value }, diagnostics };
}

/** `Anna=anna-gauge.json`, as often as there are such. */
export async function loadTraineeGauges(
  words: readonly string[],
  world: World,
): Promise<Outcome<ReadonlyMap<string, NamedGauge>>> {
  const loaded = await Promise.all(words.map((word) => loadTraineeGauge(word, world)));
  const diagnostics = loaded.flatMap((one) => one.diagnostics);
  const value = new Map(loaded.flatMap((one) => (one.value === undefined ? [] : [one.value])));
  return hasErrors(diagnostics) ? { diagnostics } : { value, diagnostics };
}

async function loadTraineeGauge(
  word: string,
  world: World,
): Promise<Outcome<readonly [string, NamedGauge]>> {
  const at = word.indexOf('=');
  const [name, path] = [word.slice(0, at).trim(), word.slice(at + 1).trim()];
  if (at < 1 || name === '' || path === '') {
    const message = `"${word}" names no trainee and gauge file`;
    const hint = 'write --trainee-gauge Anna=anna-gauge.json';
    return { diagnostics: [error('usage-option-value', message, { hint })] };
  }
  const gauge = { value: path, folder: '', origin: 'flag', where: '--trainee-gauge' } as const;
  const { value, diagnostics } = await loadGaugeFile({ gauge }, world);
  return value === undefined ? { diagnostics } : { value: [name, value], diagnostics };
}
