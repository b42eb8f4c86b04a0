import { type Diagnostic, error, hasErrors } from '../../base/diagnostics.ts';
import { suggest } from '../../base/did-you-mean.ts';
import { methodListBlocks } from '../../report/methods/method-list-blocks.ts';
import { methodListRecord, shownMethodRecord } from '../../report/methods/methods-record.ts';
import {
  methodListTable,
  shownMethodTable,
  suppliesTable,
} from '../../report/methods/methods-tables.ts';
import { shownMethodBlocks } from '../../report/methods/shown-method-blocks.ts';
import { suppliesBlocks, suppliesRecord } from '../../report/methods/supplies-pages.ts';
import { listMethods, methodSources, showMethod } from '../../tasks/methods/methods.ts';
import { methodAssumptions } from '../../tasks/methods/methods-assumptions.ts';
import { ratesReport } from '../../tasks/methods/rates-report.ts';
import type { Settings } from '../../tasks/settings/settings.ts';
import { supplies } from '../../work/supplies.ts';
import { type Answer, type Command, failed } from '../command.ts';
import { loadWithRates } from '../load/load-rates.ts';
import { loadShopSettings } from '../load/load-settings.ts';
import { formats } from '../options/output-specs.ts';
import { version } from '../version.ts';

const ACTIONS = ['list', 'show', 'materials'] as const;

export const methodsCommand: Command = {
  name: 'methods',
  summary: 'list what cuts how much, show how a rate is reckoned, list what is used up',
  operands: 'list | show <id> | materials',
  words: ACTIONS,
  filesOf: () => [],
  options: ['shop', 'rates'],
  formats,
  examples: [
    'leastcut methods list',
    'leastcut methods show da/foam-medium/medium',
    'leastcut methods list --rates samples/rates.json',
    'leastcut methods materials',
    'leastcut methods materials --format csv',
    'leastcut methods show rotary --shop samples/shop.json --format json',
  ],
  run: async ([action = 'list', id, ...excess], options, world) => {
    const problem = operandProblem(action, id, excess);
    if (problem !== undefined) return failed([problem]);
    const plain = await loadShopSettings(options, world);
    if (plain.value === undefined) return failed(plain.diagnostics);
    const { value: settings, diagnostics: found } = await loadWithRates(plain.value, world);
    const diagnostics = [...plain.diagnostics, ...found];
    if (settings === undefined || hasErrors(diagnostics)) return failed(diagnostics);
    if (action === 'materials') return listOfSupplies(settings, diagnostics);
    return id === undefined ? listOf(settings, diagnostics) : shown(id, settings, diagnostics);
  },
};

function listOfSupplies({ models, correction }: Settings, diagnostics: Diagnostics): Answer {
  const used = supplies(models.work, correction);
  return {
    pages: () => [suppliesBlocks(used)],
    records: () => [suppliesRecord(used, { version, diagnostics })],
    table: () => suppliesTable(used),
    diagnostics,
  };
}

function listOf(settings: Settings, diagnostics: Diagnostics): Answer {
  const methods = listMethods(methodSources(settings));
  const rates = ratesReport(settings);
  const assumptions = methodAssumptions(settings);
  const unit = settings.showUnit.value;
  return {
    pages: () => [methodListBlocks(methods, assumptions, unit, rates)],
    records: () => [methodListRecord(methods, assumptions, { version, diagnostics }, rates)],
    table: () => methodListTable(methods),
    diagnostics,
  };
}

function shown(id: string, settings: Settings, diagnostics: Diagnostics): Answer {
  const { value: method, diagnostics: told } = showMethod(id, methodSources(settings));
  if (method === undefined) return failed([...diagnostics, ...told]);
  const rates = ratesReport(settings);
  const assumptions = methodAssumptions(settings);
  const unit = settings.showUnit.value;
  return {
    pages: () => [shownMethodBlocks(method, unit, rates)],
    records: () => [shownMethodRecord(method, assumptions, { version, diagnostics }, rates)],
    table: () => shownMethodTable(method),
    diagnostics,
  };
}

type Diagnostics = readonly Diagnostic[];

const HINT = 'leastcut methods list, leastcut methods show <id>, or leastcut methods materials';

function operandProblem(
  action: string,
  id: string | undefined,
  excess: readonly string[],
): Diagnostic | undefined {
  if (!ACTIONS.some((known) => known === action)) {
    const message = `"${action}" is nothing that methods does`;
    return error('usage-option-value', message, { hint: suggest(action, ACTIONS) ?? HINT });
  }
  const takesId = action === 'show';
  if (takesId === (id !== undefined) && excess.length === 0) return undefined;
  const takes = takesId ? 'one id' : 'nothing more';
  return error('usage-option-value', `methods ${action} takes ${takes}`, { hint: HINT });
}
