/**
 * A clear that is stated, of the car or of a panel, lies within the film of each panel: one that is as thick as all that
 * a point of the panel reads is something else, such as the total, and is left out there.
 */
import { type Diagnostic, type Place, warning } from '../../base/diagnostics.ts';
import { groupBy } from '../../base/group-by.ts';
import { tell, um } from '../../base/sentence.ts';
import type { Reading } from '../../film/reading.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import type { EffectiveFacts } from '../settings/panel-facts.ts';
import { builtIn } from '../settings/setting-origin.ts';

type Facts = ReadonlyMap<string, EffectiveFacts>;

export function believedClears(
  facts: Facts,
  readings: readonly Reading[],
  { panels }: VehicleTemplate,
): { readonly facts: Facts; readonly diagnostics: readonly Diagnostic[] } {
  const stated = panels.flatMap(({ id, name }) => {
    const own = facts.get(id);
    const clear = own?.clear.value ?? null;
    return own === undefined || clear === null ? [] : [{ id, name, own, clear }];
  });
  if (stated.length === 0) return { facts, diagnostics: [] };
  const least = leastByPanel(readings);
  const impossible = stated.filter(
    ({ id, clear }) => clear.mean >= (least.get(id) ?? Number.POSITIVE_INFINITY),
  );
  const left = impossible.map(({ id, own }) => [id, { ...own, clear: builtIn(null) }] as const);
  return {
    facts: new Map([...facts, ...left]),
    diagnostics: [...groupBy(impossible, ({ own }) => own.clear.where)].map(([where, group]) => {
      const [{ clear }] = group;
      const names = group.map(({ id, name }) => `${name} (${filmText(least.get(id) ?? 0)})`);
      return warning(
        'stated-clear-too-thick',
        `a clear of ${filmText(clear.mean)} is stated where a point reads no more in all: it is left out of ${names.join(', ')}`,
        {
          at: placeIn(where),
          hint: 'state the clear alone, as the paint’s maker or an instrument for layers gives it, or leave it out',
        },
      );
    }),
  };
}

function leastByPanel(readings: readonly Reading[]): ReadonlyMap<string, number> {
  const whole = readings.filter(({ layer, place }) => layer === '' && place === 'face');
  return new Map(
    [...groupBy(whole, ({ panel }) => panel)].map(([id, own]) => [
      id,
      Math.min(...own.map(({ thickness }) => thickness)),
    ]),
  );
}

const filmText = (film: number): string => tell([um(film)], 'um');

/** `job.json:12` as the place that it is. */
export function placeIn(where: string): Place {
  const [, file = where, line] = /^(.*):(\d+)$/.exec(where) ?? [];
  return line === undefined ? { file } : { file, line: Number(line) };
}
