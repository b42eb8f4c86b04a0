import { describe, expect, test } from 'vitest';
import { displayWidth } from '../../src/render/printable.ts';
import { askLeastcut } from './ask-leastcut.ts';

const folder = 'samples/sound-saloon';
const readings = `${folder}/readings.csv`;
const job = ['--job', `${folder}/job.json`];
const defects = ['--defects', `${folder}/defects.csv`];

const pages = [
  { page: 'survey', most: 56, words: ['survey', readings] },
  { page: 'survey with the job', most: 48, words: ['survey', readings, ...job] },
  { page: 'plan', most: 63, words: ['plan', readings] },
  { page: 'plan with the job', most: 52, words: ['plan', readings, ...job] },
  { page: 'plan with job and defects', most: 52, words: ['plan', readings, ...job, ...defects] },
];
const LIMITS = /^(clear|life|total|n = 1|matte|covered|fresh|spot 1st|line|no data)$/;

describe.concurrent.each(pages)('the $page of a car of 13 panels', ({ words, most }) => {
  test.each([80, 120])(
    'says its answer and its table on one screen of %i columns, all in less than two',
    async (width) => {
      const { code, out } = await askLeastcut(words, { env: { COLUMNS: String(width) } });
      const lines = out.trimEnd().split('\n');
      expect(code).toBe(0);
      const head = lines.findIndex((line) => line.startsWith('panel (µm)'));
      const last = lines.findIndex((line, i) => i > head && line === '');
      expect([head > 0, last > head, last <= 36]).toEqual([true, true, true]);
      expect(lines.length).toBeLessThanOrEqual(most);
      expect(lines.filter((line) => displayWidth(line) > width)).toEqual([]);
    },
  );

  test('is 80 columns wide where nothing states a width', async () => {
    const [bare, stated] = await Promise.all([
      askLeastcut(words),
      askLeastcut(words, { env: { COLUMNS: '80' } }),
    ]);
    expect(bare.out).toBe(stated.out);
  });

  test('names for every panel that was read the limit that binds, and it is that of the record', async () => {
    const [text, json] = await Promise.all([
      askLeastcut(words),
      askLeastcut([...words, '--format', 'json']),
    ]);
    const lines = text.out.split('\n');
    const head = lines.find((line) => line.startsWith('panel (µm)')) ?? '';
    const at = head.indexOf('bound by');
    const rows = lines.slice(lines.indexOf(head) + 1).slice(0, 13);
    const bound = rows.map((row) => row.slice(at, at + 'bound by'.length).trim());
    expect(bound.filter((word) => !LIMITS.test(word))).toEqual([]);
    const record = JSON.parse(json.out) as { panels: { bound_by: string }[] };
    const counted = (words: readonly string[], word: string) =>
      words.filter((one) => one === word).length;
    const codes = record.panels.map(({ bound_by }) => bound_by);
    for (const word of ['clear', 'life', 'total']) {
      expect(counted(bound, word)).toBe(counted(codes, word));
    }
  });
});
