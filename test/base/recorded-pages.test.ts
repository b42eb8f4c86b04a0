/** What each of our own results is called, by what the program wrote in the whole-program cases. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ownResult } from '../../src/base/own-files.ts';
import { ownPage } from '../../src/base/own-pages.ts';
import { resultTable } from '../../src/base/result-tables.ts';

const recorded = (name: string): string =>
  readFileSync(join(import.meta.dirname, '../cases', name, 'expected.out'), 'utf8').slice(0, 4096);

const pages: Readonly<Record<string, readonly string[]>> = {
  'a survey': ['survey-sound-saloon-text', 'survey-md', 'survey-narrow', 'survey-plain'],
  'a plan': ['plan-sound-saloon-text', 'plan-card', 'plan-card-md', 'plan-why', 'plan-plain'],
  'a quote': ['quote-sound-saloon-text', 'quote-md', 'quote-plain-ascii'],
  'a list of readings': ['read-sound-saloon-text', 'read-note-dash'],
  'a comparison': ['compare-text', 'compare-visits-text', 'compare-unmarked'],
  'a page of test spots': ['spot-older-coupe-text', 'spot-by-eye'],
  'a grading': ['grade-class', 'grade-consensus'],
  'a sheet of a trainee': ['grade-sheet', 'grade-attempts'],
  'a check of a gauge': ['gauge-pass', 'gauge-fail', 'gauge-undecided'],
  'a page of a batch': ['batch-week-text', 'batch-week-md'],
  'a list of templates': ['template-list'],
  'a template': ['template-show-saloon'],
  'a check of a template': ['template-check'],
  'a list of methods': ['methods-list', 'methods-md'],
  'a page of a method': ['methods-show-combination', 'methods-show-own-pad'],
  'a list of materials': ['methods-materials'],
  'a list of what can be explained': ['explain-all'],
  'an explanation': ['explain-code', 'explain-defaults', 'explain-word'],
  'a page of the settings': ['doctor-rates-file', 'version'],
  'a check of settings files': ['doctor-check'],
  'a completion': ['completion-fish'],
  'a page of help': ['help', 'help-plan'],
  'a page in HTML': ['survey-html', 'plan-html'],
};

describe('a page that the program wrote', () => {
  test.each(Object.entries(pages))('is known as %s', (called, names) => {
    for (const name of names) {
      expect([name, ownPage(recorded(name))]).toEqual([name, called]);
      expect([name, ownResult(recorded(name))]).toEqual([name, called]);
    }
  });

  test('is known in colours, over two lines and from no more than its beginning', () => {
    const survey = recorded('survey-sound-saloon-text');
    expect(ownPage(`\u001b[1;4m${survey.replace(':', ':\u001b[0m')}`)).toBe('a survey');
    expect(ownPage(survey.replace(', ', ',\n  '))).toBe('a survey');
    expect(ownPage(`${'x'.repeat(600)}\n${survey}`)).toBeUndefined();
    expect(ownPage(`note\n${survey}`)).toBeUndefined();
    const heading = (car: string) => `Survey of ${car}: saloon, 13 panels, 65 points`;
    expect(ownPage(heading('FH-1042'))).toBe('a survey');
    expect(ownPage(heading('x'.repeat(600)))).toBeUndefined();
  });

  test('in HTML is ours only by the name of what wrote it', () => {
    const html = recorded('survey-html');
    expect(ownPage(html.replace('content="leastcut"', 'content="another"'))).toBeUndefined();
    expect(ownPage(` ${html}`)).toBeUndefined();
  });
});

describe('a record', () => {
  test('is known by its schema, wherever blanks stand', () => {
    expect(ownResult(recorded('plan-sound-saloon-json'))).toBe('a record');
    expect(ownResult('{"schema":"leastcut/survey/1"}')).toBe('a record');
    expect(ownResult('\n {  "schema" :\t"leastcut/survey/1"')).toBe('a record');
    expect(ownResult('{"schema":"other/survey/1"}')).toBeUndefined();
    expect(ownResult('[{"schema":"leastcut/survey/1"}]')).toBeUndefined();
  });
});

describe('a table that the program wrote', () => {
  const tables: Readonly<Record<string, string>> = {
    'survey-csv': 'a survey',
    'plan-csv': 'a plan',
    'quote-sound-saloon-csv': 'a quote',
    'compare-csv': 'a comparison',
    'grade-class-csv': 'a mark book',
    'gauge-pass-csv': 'a check of a gauge',
    'batch-week-csv': 'the summary of a batch',
    'fields-listed': 'a list of columns',
  };

  test.each(Object.entries(tables))('%s is known as %s by its head', (name, called) => {
    expect(ownResult(recorded(name))).toBe(called);
    const [head = ''] = recorded(name).split('\n', 1);
    expect(ownResult(`${head}\r\n1,2`)).toBe(called);
    expect(ownResult(`${head}\r1,2`)).toBe(called);
    expect(resultTable(`\uFEFF${head}`)).toBe(called);
  });

  test('is known by any of its columns that nothing else has, and by all of them together alone', () => {
    expect(resultTable('budget_um')).toBe('a survey');
    expect(resultTable('panel,bound_by,vehicle')).toBe('a survey');
    expect(resultTable('verdict,already_prob')).toBe('a plan');
    expect(resultTable('budget_um,own_note')).toBeUndefined();
    expect(resultTable('budget_um,z')).toBeUndefined();
  });

  test('is nobody’s where other tables have its columns as well', () => {
    expect(resultTable('panel,date')).toBeUndefined();
    expect(resultTable('panel,zone,point')).toBeUndefined();
    expect(resultTable('')).toBeUndefined();
    expect(resultTable('Budget_um')).toBeUndefined();
    expect(ownResult('panel,point,reading_um\nroof,1,120\n')).toBeUndefined();
  });
});
