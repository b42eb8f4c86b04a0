import { expect, test } from 'vitest';
import { tableHtml } from '../../src/render/html-table.ts';
import { cell } from '../../src/report/model.ts';

test('what a table is read for stands next to the name of the row, the rest behind it in order', () => {
  const html = tableHtml(
    [
      { title: 'panel', align: 'left' },
      { title: 'n', align: 'right' },
      { title: 'mean', align: 'right' },
      { title: 'may go', align: 'right', leads: true },
      { title: 'condition', align: 'left', leads: true },
    ],
    [[cell('roof'), cell('5'), cell('106.8'), cell('2.59'), cell('original')]],
  );
  const texts = [...html.matchAll(/<t[hd][^>]*>([^<]*)</g)]
    .map(([, text]) => text)
    .filter((text) => text !== '');
  expect(texts).toEqual([
    ...['panel', 'may go', 'condition', 'n', 'mean'],
    ...['roof', '2.59', 'original', '5', '106.8'],
  ]);
});

test('a part of a row is heard with the row that it is of, in its name and in its drawing', () => {
  const axis = { from: 0, to: 10, line: null };
  const strip = { kind: 'strip', values: [5], marked: null } as const;
  const html = tableHtml(
    [
      { title: 'panel', align: 'left' },
      { title: 'readings', align: 'left', axis },
    ],
    [
      [cell('roof'), strip],
      [cell('\u00a0\u00a0thinner zone'), strip],
      [cell('bonnet'), strip],
    ],
  );
  expect(html).toContain('<span class="unseen">roof, </span>\u00a0\u00a0thinner zone</th>');
  expect([...html.matchAll(/<title>([^<]+)</g)].map(([, name]) => name)).toEqual([
    'roof: readings',
    'roof, thinner zone: readings',
    'bonnet: readings',
  ]);
  expect(html.match(/unseen/g)).toHaveLength(1);
});
