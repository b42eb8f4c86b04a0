import { describe, expect, test } from 'vitest';
import { renderJson } from '../../src/render/json.ts';
import { displayWidth } from '../../src/render/printable.ts';
import { renderText } from '../../src/render/text.ts';
import { explainBlocks, topicListBlocks } from '../../src/report/explain/explain-blocks.ts';
import { explainRecord } from '../../src/report/explain/explain-record.ts';
import type { Block } from '../../src/report/model.ts';
import { explain } from '../../src/tasks/explain/explain.ts';
import { allTopics } from '../../src/tasks/explain/explain-topics.ts';
import { resolveSettings } from '../../src/tasks/settings/settings.ts';
import { layersOf } from '../tasks/layers.ts';

const sources = { options: [], numbers: new Map() };
const context = { version: '0.0.0', diagnostics: [] };
const text = (blocks: readonly Block[]): string =>
  renderText(blocks, { width: 80, paint: (piece) => piece });
const flowing = (page: string): string => page.replaceAll(/\s+/g, ' ');

function explained(words: readonly string[], numbers: typeof sources.numbers = sources.numbers) {
  const { value } = explain(words, { options: [], numbers });
  if (value === undefined) throw new Error(`${words.join(' ')} is not explained`);
  return { page: text(explainBlocks(value)), record: explainRecord(value, [], context) };
}

describe('the page of an explanation', () => {
  test('is at most 80 columns wide, whatever is explained', () => {
    const wide = allTopics(sources).filter((topic) => {
      const page = text(explainBlocks([{ word: topic.id, topics: [topic] }]));
      return page.split('\n').some((line) => displayWidth(line) > 80);
    });
    expect(wide.map(({ id }) => id)).toEqual([]);
  });

  test('has a heading for each meaning of a word', () => {
    const { page } = explained(['clear']);
    expect(page).toMatch(/^clear coat \(word\)$/m);
    expect(page).toMatch(/^clear \(remark\)$/m);
  });

  test('of a number has meaning, value, basis, formula, use and the line to change it', () => {
    const page = flowing(explained(['film.limits.life_um']).page);
    expect(page).toContain('Most that may come off over a panel’s life.');
    expect(page).toContain('Value: 12.7 µm, built-in');
    expect(page).toContain('Basis: published: GM 91-282-10');
    expect(page).toContain('Formula: P(removal >');
    expect(page).toContain('Used in: survey and plan');
    expect(page).toContain(
      'To change it: in the shop file, "numbers": { "film.limits.life_um": 12.7 }',
    );
  });

  test('of a number that a file set has its line and what is built in', () => {
    const said = { shop: { numbers: { 'film.limits.life_um': 10 } } };
    const { numbers } = resolveSettings(layersOf(said));
    const page = flowing(explained(['film.limits.life_um'], new Map(numbers)).page);
    expect(page).toMatch(/Value: 10 µm, from shop\.json:\d+; built-in 12\.7 µm/);
  });

  test('of a pure number shows no unit', () => {
    expect(explained(['correction.removal.overlap']).page).toMatch(/^Value: 0\.5, built-in$/m);
  });

  test('of many numbers is a row each', () => {
    const { page } = explained(['film.limits']);
    expect(page).toMatch(/^film\.limits: \d+ numbers\n/);
    expect(page).toMatch(/^film\.limits\.life_um +12\.7 published$/m);
    const few = explained(['film.tolerance']).page;
    expect(few).toMatch(/^film\.tolerance\.content \(default\)$/m);
  });

  test('of a diagnostic shows the smallest input as it would stand in a file', () => {
    const { page } = explained(['reading-ambiguous']);
    expect(page).toContain('For example: leastcut survey input.csv\n');
    expect(page).toContain('with input.csv\n  panel;point;reading_um\n  bonnet;1;1.234\n');
  });
});

describe('the list of what can be explained', () => {
  const page = text(topicListBlocks(allTopics(sources)));

  test('is at most 80 columns wide and names every kind', () => {
    expect(Math.max(...page.split('\n').map(displayWidth))).toBeLessThanOrEqual(80);
    for (const heading of [
      'Words of the trade and of measuring',
      'Verdicts',
      'Defects',
      'Options',
      'Exit codes',
    ]) {
      expect(page).toMatch(new RegExp(`^${heading}:`, 'm'));
    }
    expect(flowing(page)).toContain('correction.heat (11)');
  });

  test('has words by the alphabet', () => {
    const [, words = ''] =
      flowing(page).match(/Words of the trade and of measuring: (.*?) Headings/) ?? [];
    const listed = words.split(', ');
    expect(listed.length).toBeGreaterThan(100);
    const folded = listed.map((word) => word.toLowerCase());
    expect(folded).toEqual([...folded].sort());
  });
});

test('small words that are values are answered, and not among the words a beginner reads', () => {
  const page = flowing(text(topicListBlocks(allTopics(sources))));
  const [, words = ''] = page.match(/Words of the trade and of measuring: (.*?) Headings/) ?? [];
  const listed = words.split(', ');
  for (const word of ['m', 'on', 'up', 'none', 'before', 'how to read it']) {
    expect(listed).not.toContain(word);
    expect(explained([word]).page).toMatch(/\((value|heading)\)$/m);
  }
  expect(listed).toContain('clear coat');
  expect(page).toMatch(/Words that they, or the columns of a page, are set to: \d+, as /);
});

test('the record is leastcut/explain/1, each topic with the word it was asked by', () => {
  const { record } = explained(['dft', 'correction.removal.preston_per_pa', 'file-empty']);
  expect(record['schema']).toBe('leastcut/explain/1');
  const topics = record['topics'] as readonly Record<string, unknown>[];
  expect(topics.map(({ word, kind }) => [word, kind])).toEqual([
    ['dft', 'word'],
    ['correction.removal.preston_per_pa', 'default'],
    ['file-empty', 'diagnostic'],
  ]);
  expect(topics[0]?.['number']).toBeNull();
  expect(topics[1]?.['number']).toMatchObject({ value: 7.8e-12, origin: 'built-in' });
  expect(topics[2]?.['example']).toMatchObject({ command: 'survey input.csv' });
  expect(renderJson(record)).not.toContain('undefined');
});
