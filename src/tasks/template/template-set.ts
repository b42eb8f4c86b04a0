/** The templates there are to choose from: the built-in ones, and those of files. */
import { type Diagnostic, error, type Outcome, type Place } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { once } from '../../base/kept.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';

/**
 * The built-in templates with the own ones. One that has the id of a built-in one stands in its place;
 * two own ones of the same id are refused, since nobody could name the second.
 */
export function templatesInForce(
  builtIn: readonly VehicleTemplate[],
  own: readonly VehicleTemplate[],
): Outcome<readonly VehicleTemplate[]> {
  const diagnostics = own.flatMap((template, i): readonly Diagnostic[] => {
    const first = own.findIndex(({ id }) => id === template.id);
    return first === i ? [] : [sameId(template, own[first])];
  });
  if (diagnostics.length > 0) return { diagnostics };
  const byId = new Map(own.map((template) => [template.id, template]));
  const replaced = builtIn.map((template) => byId.get(template.id) ?? template);
  const added = own.filter(({ id }) => !builtIn.some((template) => template.id === id));
  return { value: [...replaced, ...added], diagnostics: [] };
}

function sameId({ id, origin }: VehicleTemplate, first: VehicleTemplate | undefined): Diagnostic {
  const other = first?.origin?.file ?? 'another file';
  return error('settings-invalid', `the template "${id}" is also in ${other}`, {
    ...(origin === undefined ? {} : { at: { file: origin.file } }),
    hint: 'give one of the two another "id"',
  });
}

/** Why the name of a template leads nowhere; nothing where it does. */
export function noSuchTemplate(
  id: string,
  templates: readonly VehicleTemplate[],
  at: Place | undefined,
): Diagnostic | undefined {
  if (templates.some((template) => template.id === id)) return undefined;
  const unknown = unknownTemplate(id, templates);
  if (at === undefined) return unknown;
  const { hint } = unknown;
  return error('settings-invalid', `"template" is "${id}", and there is no such template`, {
    at,
    hint,
  });
}

export function unknownTemplate(id: string, templates: readonly VehicleTemplate[]): Diagnostic {
  const ids = templates.map((template) => template.id);
  return error('usage-unknown-template', `there is no template "${id}"`, {
    hint: templateHint(id, ids),
  });
}

/** Other words for the built-in body classes. */
const otherWords = once(
  (): ReadonlyMap<string, string> =>
    new Map(
      (
        [
          ['saloon', 'sedan notchback four-door'],
          ['estate', 'wagon station-wagon tourer shooting-brake'],
          ['hatch', 'hatchback five-door compact'],
          ['supermini', 'city-car small'],
          ['coupe', 'coupé two-door'],
          ['mid-suv', 'suv crossover off-roader 4x4'],
          ['double-cab-pickup', 'pickup pick-up truck ute'],
          ['medium-van', 'van panel-van'],
        ] as const
      ).flatMap(([id, words]) => words.split(' ').map((word) => [word, id] as const)),
    ),
);

function templateHint(id: string, ids: readonly string[]): string {
  const meant = otherWords().get(
    id
      .trim()
      .toLowerCase()
      .replaceAll(/[\s_]+/g, '-'),
  );
  if (meant !== undefined && ids.includes(meant)) return `here that is "${meant}"`;
  return suggest(id, ids) ?? `one of ${ids.join(', ')}; a file ends in .json`;
}
