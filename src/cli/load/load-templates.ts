/** Templates named by id or by file → those to choose from, and which one is chosen. */
import { found, hasErrors, type Outcome, refused } from '../../base/diagnostics.ts';
import { keptWith } from '../../base/kept.ts';
import type { Side } from '../../film/template/panel-sense.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { isTemplatePath } from '../../film/template/template-name.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import { builtInTemplates } from '../../formats/data/templates.ts';
import type { TemplateFile } from '../../formats/template/template.ts';
import { noSuchTemplate, templatesInForce } from '../../tasks/template/template-set.ts';
import type { World } from '../command.ts';
import { type NamedFile, readNamed } from './named-file.ts';

export type TemplateNames = {
  /** By its id, or by the path of a file. */
  readonly chosen: NamedFile | undefined;
  /** Files whose templates are among those to choose from. */
  readonly own: readonly NamedFile[];
};

export type LoadedTemplates = {
  readonly templates: readonly VehicleTemplate[];
  /** The one that is named; absent where the readings are to decide. */
  readonly templateId: string | undefined;
};

/** By what rules templates are read, and which side is called the nearside. */
export type TemplateTerms = { readonly rules: TemplateRules; readonly nearside: Side | null };

export async function loadTemplates(
  names: TemplateNames,
  world: World,
  { rules, nearside }: TemplateTerms,
): Promise<Outcome<LoadedTemplates>> {
  const { value, diagnostics } = await namedTemplates(names, world, rules);
  if (value === undefined || nearside === null) {
    return value === undefined ? { diagnostics } : { value, diagnostics };
  }
  const templates = value.templates.map((template) => withNearside(template, nearside));
  return { value: { ...value, templates }, diagnostics };
}

/** The same object each time: what its labels mean is worked out once. */
const withNearside = (template: VehicleTemplate, nearside: Side): VehicleTemplate =>
  sided[nearside](template);

const sided = {
  left: keptWith((template: VehicleTemplate) => ({ ...template, nearside: 'left' as const })),
  right: keptWith((template: VehicleTemplate) => ({ ...template, nearside: 'right' as const })),
};

async function namedTemplates(
  { chosen, own }: TemplateNames,
  world: World,
  rules: TemplateRules,
): Promise<Outcome<LoadedTemplates>> {
  if (chosen !== undefined && isTemplatePath(chosen.value)) {
    const { value, diagnostics } = await loadTemplate(chosen, world, rules);
    return value === undefined
      ? { diagnostics }
      : { value: { templates: [value.template], templateId: value.template.id }, diagnostics };
  }
  const read = await Promise.all(own.map((one) => loadTemplate(one, world, rules)));
  const diagnostics = read.flatMap((one) => one.diagnostics);
  if (hasErrors(diagnostics)) return { diagnostics };
  const all = templatesInForce(
    builtInTemplates,
    read.flatMap(({ value }) => value?.template ?? []),
  );
  if (all.value === undefined) return { diagnostics: [...diagnostics, ...all.diagnostics] };
  const missing =
    chosen === undefined ? undefined : noSuchTemplate(chosen.value, all.value, chosen.at);
  return missing === undefined
    ? found({ templates: all.value, templateId: chosen?.value }, diagnostics)
    : refused(...diagnostics, missing);
}

/** One template file, with what is wrong with it. */
export const loadTemplate = (
  named: NamedFile,
  world: World,
  rules: TemplateRules,
): Promise<Outcome<TemplateFile>> =>
  readNamed(named, world, async (name, text) => {
    // It brings a validation library along, which most runs do without.
    const { readTemplate } = await import('../../formats/template/template.ts');
    return readTemplate(name, text, builtInTemplates, rules);
  });
