/** Whatever a command writes is told as ours where it lies among the files of jobs, in each of its forms. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ownResult } from '../../src/base/own-files.ts';
import { resultTable } from '../../src/base/result-tables.ts';
import { formatsOf } from '../../src/cli/command.ts';
import { commands, loadCommand } from '../../src/cli/commands.ts';
import { optionTopics } from '../../src/cli/options/option-topics.ts';
import { tableColumns } from '../../src/formats/data/table-columns.ts';
import { wrap } from '../../src/render/wrap.ts';
import { allTopics } from '../../src/tasks/explain/explain-topics.ts';
import { askLeastcut } from './ask-leastcut.ts';
import { caseNames } from './case-command.ts';
import { temporaryFolder } from './temporary-folder.ts';

const saloon = 'samples/sound-saloon';
const readings = `${saloon}/readings.csv`;

/** Each command, with each of its words. */
const asked: readonly (readonly string[])[] = [
  ['read', readings],
  ['survey', readings],
  ['plan', readings],
  ['quote', readings, '--shop', 'samples/shop.json'],
  ['batch', 'samples/week/jobs.csv', '--workers', '1'],
  ['batch', 'samples/week/jobs.csv', '--workers', '1', '--command', 'survey'],
  ['spot', 'samples/older-coupe/spots.csv'],
  ['compare', readings, `${saloon}/after.csv`],
  ['grade', 'samples/class/reference.csv', 'samples/class/anneke.csv'],
  ['grade', 'samples/class/reference.csv', 'samples/class/anneke.csv', '--trainee', 'anneke'],
  ['gauge', 'samples/gauge-checks.csv'],
  ['template', 'list'],
  ['template', 'show', 'saloon'],
  ['template', 'check', 'samples/two-door.json'],
  ['template', 'sheet', 'saloon'],
  ['methods', 'list'],
  ['methods', 'show', 'da'],
  ['methods', 'show', 'foam-soft'],
  ['methods', 'show', 'fine'],
  ['methods', 'show', 'da/foam-medium/medium'],
  ['methods', 'materials'],
  ['explain'],
  ['explain', 'film.limits'],
  ['explain', 'low', 'spot'],
  ['init'],
  ['doctor'],
  ['doctor', 'samples/shop.json'],
  ...['bash', 'zsh', 'fish', 'powershell'].map((shell) => ['completion', shell]),
];

/** A reading sheet may be filled in, and readings in our own columns are readings. */
const isInput = (words: readonly string[], form: string): boolean =>
  form === 'html' || form.includes('json')
    ? false
    : words[1] === 'sheet' || (words[0] === 'read' && form === 'csv');

test('each command is asked, with each of its words', async () => {
  for (const { name } of commands) {
    const { words = [] } = await loadCommand(name);
    const own = asked.filter(([first]) => first === name);
    expect(own.length, name).toBeGreaterThan(0);
    for (const word of words) expect(own.flat(), name).toContain(word);
  }
});

test.each(asked.map((words) => ({ words })))('$words is told in every form', async ({ words }) => {
  const [name = ''] = words;
  const forms = formatsOf(await loadCommand(name)).map((format) => ['--format', format]);
  const looks = [
    ['--format', 'text', '--plain'],
    ['--format', 'text', '--ascii'],
  ];
  for (const form of [...forms, ...(name === 'completion' ? [] : looks)]) {
    const look = form.includes('text') ? ['--color', 'always'] : [];
    const folder = name === 'init' ? [temporaryFolder()] : [];
    const { out } = await askLeastcut([...words, ...form, ...look, ...folder], {
      env: { COLUMNS: '60' },
    });
    expect(out, form.join(' ')).not.toBe('');
    const about = `${words.join(' ')} ${form.join(' ')}: ${out.slice(0, 90)}`;
    if (isInput(words, form.at(-1) ?? '')) expect(ownResult(out), about).toBeUndefined();
    else expect(ownResult(out), about).toBeDefined();
  }
});

test('whatever a case of the tests has written is told, inputs apart', () => {
  const cases = join(import.meta.dirname, '../cases');
  const inputs = /^(?:read-csv|template-sheet.*)$/;
  // Nothing of a batch but two columns that a list of somebody else's jobs may have as well.
  const common = ['batch-reorder'];
  for (const name of caseNames(cases)) {
    const out = readFileSync(join(cases, name, 'expected.out'))
      .subarray(0, 4096)
      .toString('latin1');
    if (out === '' || inputs.test(name) || common.includes(name)) continue;
    expect(ownResult(out), `${name}: ${out.slice(0, 90)}`).toBeDefined();
  }
});

test('whatever explain says of a word is told', () => {
  const topics = allTopics({ options: optionTopics([]), numbers: new Map() });
  expect(topics.length).toBeGreaterThan(1000);
  const lost = topics.filter(({ id, kind, meaning }) => {
    const lines = wrap(`${id} (${kind})`, 60, '  ').concat(wrap(meaning, 60, ''));
    return ownResult(lines.join('\n')) === undefined;
  });
  expect(lost.map(({ id }) => id)).toEqual([]);
});

describe('a table that a command wrote', () => {
  const isInputTable = (table: string): boolean => ['read', 'template sheet'].includes(table);
  const tables = Object.entries(tableColumns).map(([table, columns]) => ({
    table,
    names: Object.keys(columns),
  }));

  test.each(tables)('$table is told by its head and by any column that is its own', (one) => {
    const { table, names } = one;
    if (isInputTable(table)) {
      expect(resultTable(names.join())).toBeUndefined();
      return;
    }
    expect(resultTable(names.join())).toBeDefined();
    const inputs = new Set(
      tables.filter((each) => isInputTable(each.table)).flatMap((each) => each.names),
    );
    const told = names.filter((name) => resultTable(name) !== undefined);
    expect(told.filter((name) => inputs.has(name))).toEqual([]);
    expect(told.length).toBeGreaterThan(table.startsWith('methods') ? 1 : 2);
    for (const own of told) {
      expect(
        resultTable([...names.filter((name) => name !== own).reverse(), own].join()),
      ).toBeDefined();
      expect(resultTable([own, names[0]].join())).toBeDefined();
    }
  });

  test.each([
    'panel,point,reading_um',
    'vehicle,panel,clear_um',
    'panel,reference_um',
    'id,value,unit',
    'job,status',
    'job,readings,budget_um',
    'Panel,Budget_um',
    'panel;budget_um',
    'job,vehicle,date',
    'bonnet,roof,boot lid',
    '',
  ])('is not taken for one where others may have written it: %j', (head) => {
    expect(resultTable(head)).toBeUndefined();
  });
});
