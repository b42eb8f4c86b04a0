import { error } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { builtInTemplates } from '../../formats/data/templates.ts';
import { templateBlocks, templateListBlocks, templateRecord } from '../../report/template-pages.ts';
import { unknownTemplate } from '../../tasks/read-vehicles.ts';
import { type Command, failed } from '../command.ts';
import { version } from '../version.ts';

const ACTIONS = ['list', 'show'] as const;

export const templateCommand: Command = {
  name: 'template',
  summary: 'list the vehicle templates, or show one',
  operands: 'list | show <id>',
  options: [],
  examples: [
    'leastcut template list',
    'leastcut template show saloon',
    'leastcut template show coupe --format json',
  ],
  run: async (operands) => {
    const [action = 'list', id, ...excess] = operands;
    const hint = 'leastcut template list, or leastcut template show <id>';
    if (!ACTIONS.some((known) => known === action)) {
      const message = `"${action}" is nothing that template does`;
      return failed([
        error('usage-option-value', message, { hint: suggest(action, ACTIONS) ?? hint }),
      ]);
    }
    if ((action === 'list') !== (id === undefined) || excess.length > 0) {
      return failed([
        error(
          'usage-option-value',
          `template ${action} takes ${action === 'list' ? 'nothing more' : 'one id'}`,
          { hint },
        ),
      ]);
    }
    if (id === undefined) return answer(templateListBlocks(builtInTemplates), builtInTemplates);
    const template = builtInTemplates.find((one) => one.id === id);
    return template === undefined
      ? failed([unknownTemplate(id, builtInTemplates)])
      : answer(templateBlocks(template), [template]);
  },
};

const answer = (page: ReturnType<typeof templateBlocks>, templates: typeof builtInTemplates) => ({
  pages: [page],
  records: [templateRecord(templates, version)],
  diagnostics: [],
});
