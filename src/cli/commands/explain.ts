import { hasErrors } from '../../base/diagnostics.ts';
import { explainBlocks, topicListBlocks } from '../../report/explain/explain-blocks.ts';
import { explainRecord } from '../../report/explain/explain-record.ts';
import { explain } from '../../tasks/explain/explain.ts';
import { allTopics } from '../../tasks/explain/explain-topics.ts';
import { type Command, failed } from '../command.ts';
import { loadShopSettings } from '../load/load-settings.ts';
import { optionTopics } from '../options/option-topics.ts';
import { pageOptions } from '../page-options.ts';
import { version } from '../version.ts';

export const explainCommand: Command = {
  name: 'explain',
  summary: 'say what a word, a code, a number, an option or a key means',
  operands: '[word …]',
  filesOf: () => [],
  asksAboutOptions: true,
  options: ['shop'],
  examples: [
    'leastcut explain dft',
    'leastcut explain reading-ambiguous',
    'leastcut explain film.limits',
  ],
  run: async (words, options, world) => {
    const { value: settings, diagnostics } = await loadShopSettings(options, world);
    if (settings === undefined || hasErrors(diagnostics)) return failed(diagnostics);
    const { numbers } = settings;
    const sources = { options: optionTopics(await world.commands()), numbers };
    const assumptions = settings.assumptions.filter(({ code }) => code === 'settings-file');
    const context = { version, diagnostics };
    if (words.length === 0) {
      const topics = allTopics(sources);
      return {
        pages: () => [topicListBlocks(topics, pageOptions(settings, options))],
        records: () => [explainRecord([{ word: null, topics }], assumptions, context)],
        diagnostics,
      };
    }
    const explained = explain(words, sources);
    if (explained.value === undefined) return failed([...diagnostics, ...explained.diagnostics]);
    const found = explained.value;
    return {
      pages: () => [explainBlocks(found)],
      records: () => [explainRecord(found, assumptions, context)],
      diagnostics,
    };
  },
};
