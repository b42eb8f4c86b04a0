/** Templates named by id or by file → those to choose from, and which one is chosen. */
import { isAbsolute, join } from 'node:path';
import {
  type Diagnostic,
  found,
  hasErrors,
  type Outcome,
  type Place,
  refused,
} from '../../base/diagnostics.ts';
import { keptWith } from '../../base/kept.ts';
import type { Side } from '../../film/template/panel-sense.ts';
import type { VehicleTemplate } from '../../film/template/template.ts';
import { isTemplatePath } from '../../film/template/template-name.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import { builtInTemplates } from '../../formats/data/templates.ts';
import type { TemplateFile } from '../../formats/template/template.ts';
import { noSuchTemplate, templatesInForce } from '../../tasks/template/template-set.ts';
import type { World } from '../command.ts';
import { utf8Text } from '../files/utf8-text.ts';

/** How a template was named, and where. */
export type NamedTemplate = {
  /** An id, or the path of a file. */
  readonly word: string;
  /** What a path is relative to: empty for the working directory, else the folder of a settings file. */
  readonly folder: string;
  /** The line of a settings file that names it; absent for a flag. */
  readonly at?: Place | undefined;
};

export type TemplateNames = {
  readonly chosen: NamedTemplate | undefined;
  /** Files whose templates are among those to choose from. */
  readonly own: readonly NamedTemplate[];
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
  if (chosen !== undefined && isTemplatePath(chosen.word)) {
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
    chosen === undefined ? undefined : noSuchTemplate(chosen.word, all.value, chosen.at);
  return missing === undefined
    ? found({ templates: all.value, templateId: chosen?.word }, diagnostics)
    : refused(...diagnostics, missing);
}

/** One template file, with what is wrong with it. */
export async function loadTemplate(
  { word, folder, at }: NamedTemplate,
  world: World,
  rules: TemplateRules,
): Promise<Outcome<TemplateFile>> {
  const { file, diagnostics } = await world.load(
    isAbsolute(word) || folder === '' ? word : join(folder, word),
  );
  if (file === undefined) return { diagnostics: diagnostics.map((one) => namedAt(one, at)) };
  const text = utf8Text(file);
  if (text.value === undefined) return { diagnostics: text.diagnostics };
  // It brings a validation library along, which most runs do without.
  const { readTemplate } = await import('../../formats/template/template.ts');
  return readTemplate(file.name, text.value, builtInTemplates, rules);
}

/** A file that is not there was named somewhere: that is the line to mend. */
const namedAt = (diagnostic: Diagnostic, at: Place | undefined): Diagnostic =>
  at === undefined
    ? diagnostic
    : { ...diagnostic, at, hint: 'mend the path: it is relative to this file' };
