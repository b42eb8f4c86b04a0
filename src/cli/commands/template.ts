import { error, hasErrors, type Outcome, warning } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import type { Panel, VehicleTemplate } from '../../film/template/template.ts';
import { isTemplatePath } from '../../film/template/template-name.ts';
import { unusualThings } from '../../film/template/unusual-template.ts';
import type { TemplateRules } from '../../formats/data/template-defaults.ts';
import { builtInTemplates } from '../../formats/data/templates.ts';
import type { TemplateFile } from '../../formats/template/template.ts';
import { followUpBlocks } from '../../report/template/follow-up-sheet.ts';
import {
  checkBlocks,
  templateBlocks,
  templateListBlocks,
  templateListTable,
  templateTable,
} from '../../report/template/template-pages.ts';
import { templateRecord } from '../../report/template/template-record.ts';
import { sheetBlocks, sheetRecord, sheetTable } from '../../report/template/template-sheet.ts';
import { chosenPanels } from '../../tasks/read/match-panels.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { followUp, notOnSheet } from '../../tasks/template/follow-up.ts';
import { withPoints } from '../../tasks/template/sheet-points.ts';
import { unknownTemplate } from '../../tasks/template/template-set.ts';
import { type Answer, type Command, failed, type World } from '../command.ts';
import { everyTemplate } from '../load/load-inputs.ts';
import { loadShopSettings } from '../load/load-settings.ts';
import { loadTemplate } from '../load/load-templates.ts';
import { asTyped, readShown } from '../load/named-file.ts';
import { formats } from '../options/output-specs.ts';
import type { TypedOptions } from '../options.ts';
import { version } from '../version.ts';

const ACTIONS = ['list', 'show', 'check', 'sheet'] as const;
type Action = (typeof ACTIONS)[number];

export const templateCommand: Command = {
  name: 'template',
  summary: 'list, show and check vehicle templates; print a blank reading sheet',
  operands: 'list | show|check|sheet <id|file>',
  words: ACTIONS,
  options: ['shop', 'points', 'repeats', 'panel', 'for'],
  formats,
  filesOf: (operands) => operands.filter(isTemplatePath),
  examples: [
    'leastcut template list',
    'leastcut template show saloon',
    'leastcut template check samples/two-door.json',
    'leastcut template sheet saloon --format csv',
    'leastcut survey samples/older-coupe/readings.csv --format json | leastcut template sheet --for -',
    'leastcut template sheet hatch --panel bonnet --panel roof --points 9',
    'leastcut template sheet saloon --repeats 3 --format csv',
  ],
  run: async (operands, options, world) => {
    const asked = request(operands, options);
    if (asked.value === undefined) return failed(asked.diagnostics);
    const { value: settings, diagnostics } = await loadShopSettings(options, world);
    if (settings === undefined) return failed(diagnostics);
    const answer = await answerTo(asked.value, { options, settings, world });
    return { ...answer, diagnostics: [...diagnostics, ...answer.diagnostics] };
  },
};

type Request = { readonly action: Action; readonly word: string | undefined };

function request(operands: readonly string[], options: TypedOptions): Outcome<Request> {
  const [typed = 'list', word, ...excess] = operands;
  const action = ACTIONS.find((known) => known === typed);
  const refuse = (message: string, hint: string): Outcome<Request> => ({
    diagnostics: [error('usage-option-value', message, { hint })],
  });
  if (action === undefined) {
    return refuse(
      `"${typed}" is nothing that template does`,
      suggest(typed, ACTIONS) ?? `one of ${ACTIONS.join(', ')}`,
    );
  }
  const ofSheet = (['for', 'repeats'] as const).find((name) => options[name] !== undefined);
  if (ofSheet !== undefined && action !== 'sheet') {
    return refuse(`template ${action} takes no --${ofSheet}`, 'template sheet does');
  }
  // A survey names its own template.
  const bare = action === 'list' || (options.for !== undefined && word === undefined);
  if (bare !== (word === undefined) || excess.length > 0) {
    const takes = action === 'list' ? 'nothing more' : 'one id or file';
    return refuse(`template ${action} takes ${takes}`, 'leastcut template --help has examples');
  }
  return { value: { action, word }, diagnostics: [] };
}

type Around = {
  readonly options: TypedOptions;
  readonly settings: Settings;
  readonly world: World;
};

async function answerTo({ action, word }: Request, around: Around): Promise<Answer> {
  if (around.options.for !== undefined) return followUpSheet(around.options.for, word, around);
  if (word === undefined) return listAll(around);
  const { value: file, diagnostics } = await find(word, around);
  if (file === undefined) return failed(diagnostics);
  const { template } = file;
  if (action === 'check') return check(file, around.settings.templateRules);
  return action === 'show' ? show(template) : sheet(template, around);
}

/** The file of a path; else the template of that id, the shop's own ones among them. */
async function find(word: string, { settings, world }: Around): Promise<Outcome<TemplateFile>> {
  if (isTemplatePath(word)) {
    const named = { value: word, folder: '', origin: 'flag' } as const;
    return loadTemplate(named, world, settings.templateRules);
  }
  const all = await everyTemplate(settings, world);
  if (all.value === undefined) return { diagnostics: all.diagnostics };
  const { templates } = all.value;
  const template = templates.find(({ id }) => id === word);
  return template === undefined
    ? { diagnostics: [unknownTemplate(word, templates)] }
    : { value: { template, placeOfPanel: () => undefined }, diagnostics: [] };
}

async function listAll({ settings, world }: Around): Promise<Answer> {
  const all = await everyTemplate(settings, world);
  if (all.value === undefined) return failed(all.diagnostics);
  const { templates } = all.value;
  return {
    pages: () => [templateListBlocks(templates)],
    records: () => [templateRecord(templates, version)],
    table: () => templateListTable(templates),
    diagnostics: [],
  };
}

const show = (template: VehicleTemplate): Answer => ({
  pages: () => [templateBlocks(template)],
  records: () => [templateRecord([template], version)],
  table: () => templateTable(template),
  diagnostics: [],
});

function check({ template, placeOfPanel }: TemplateFile, rules: TemplateRules): Answer {
  const diagnostics = unusualThings(template, builtInTemplates, rules).map(
    ({ panel, text, hint }) => warning('template-unusual', text, { at: placeOfPanel(panel), hint }),
  );
  return {
    pages: () => [checkBlocks(template, diagnostics.length)],
    records: () => [templateRecord([template], version, diagnostics)],
    table: () => templateTable(template),
    diagnostics,
  };
}

function sheet(template: VehicleTemplate, { options, settings }: Around): Answer {
  const { panel, points } = options;
  const repeats = repeatsOf(options);
  const chosen = chosenPanels(panel ?? [], template);
  if (chosen.value === undefined || hasErrors(chosen.diagnostics)) {
    return failed(chosen.diagnostics);
  }
  const panels: readonly Panel[] = inWalkingOrder(chosen.value, template).map((one) =>
    withPoints(one, points === undefined ? undefined : Number(points)),
  );
  return {
    pages: () => [sheetBlocks({ template, panels, repeats }, settings.templateRules)],
    records: () => [sheetRecord({ template, panels, repeats }, version, chosen.diagnostics)],
    table: () => sheetTable(panels, repeats),
    diagnostics: chosen.diagnostics,
  };
}

const repeatsOf = ({ repeats = '1' }: TypedOptions): number => Number(repeats);

/** What a survey asks to be read next, on the template it was made with. */
async function followUpSheet(
  name: string,
  word: string | undefined,
  around: Around,
): Promise<Answer> {
  const { options, settings, world } = around;
  const survey = await readShown(asTyped(name), world, async (file, text) =>
    (await import('../../formats/survey-file.ts')).readSurveyFile(file, text),
  );
  if (survey.value === undefined) return failed(survey.diagnostics);
  const { value: file, diagnostics } = await find(word ?? survey.value.value.template, around);
  if (file === undefined) return failed([...survey.diagnostics, ...diagnostics]);
  const { template } = file;
  const named = options.panel ?? [];
  const chosen = chosenPanels(named, template);
  if (chosen.value === undefined) return failed([...survey.diagnostics, ...chosen.diagnostics]);
  const said = [
    ...[...survey.diagnostics, ...diagnostics, ...chosen.diagnostics],
    ...notOnSheet(survey.value, template, named.length === 0 ? [] : chosen.value),
  ];
  const asked = new Set(chosen.value.map(({ id }) => id));
  const further = followUp(survey.value.value, template).filter(({ panel }) => asked.has(panel.id));
  const panels = further.map(({ panel }) => panel);
  const repeats = repeatsOf(options);
  const ofSome = named.length > 0;
  return {
    pages: () => [followUpBlocks({ template, further, repeats, ofSome }, settings.templateRules)],
    records: () => [sheetRecord({ template, panels, repeats }, version, said)],
    table: () => sheetTable(panels, repeats),
    diagnostics: said,
  };
}

/** Each once, whatever order they were named in. */
const inWalkingOrder = (panels: readonly Panel[], template: VehicleTemplate): readonly Panel[] =>
  template.panels.filter(({ id }) => panels.some((panel) => panel.id === id));
